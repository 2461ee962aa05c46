import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { isProblem } from "../../outcome/problem.ts";
import { ICON_SETS, isIconSet } from "./icons/icon-sets.ts";
import { renderIcons } from "./icons/render-icons.ts";
import { DEVELOPMENT_ADDRESS, manifestFor, withIcons } from "./manifest-for.ts";
import { shortcutsFile, withShortcuts } from "./shortcuts.ts";

/**
 * Puts the manifests, with the address that the add-in is served from, the keys and the icons into a folder:
 * `build-addin.ts dist`. The help addresses in the functions' metadata there follow. ADDIN_URL is a shop's own
 * address; without it everything is for the development server. ADDIN_ICONS is "light" or "dark" where all
 * spreadsheets that use it have that theme.
 */
const folder = process.argv[2] ?? "dist";
const source = new URL("../../../manifest.xml", import.meta.url);
const address = process.env.ADDIN_URL ?? DEVELOPMENT_ADDRESS;
const icons = process.env.ADDIN_ICONS ?? "any";
const own = manifestFor(address, readFileSync(source, "utf8"));
if (isProblem(own)) {
  console.error(own.message);
  process.exitCode = 1;
} else if (!isIconSet(icons)) {
  console.error(`There are no icons "${icons}": ADDIN_ICONS is one of ${Object.keys(ICON_SETS).join(", ")}.`);
  process.exitCode = 1;
} else {
  const manifest = withIcons(own, icons);
  mkdirSync(join(folder, "assets"), { recursive: true });
  writeFileSync(join(folder, "manifest.xml"), manifest);
  writeFileSync(join(folder, "manifest-with-keys.xml"), withShortcuts(manifest, address));
  writeFileSync(join(folder, "shortcuts.json"), `${JSON.stringify(shortcutsFile(), null, 2)}\n`);
  const functions = join(folder, "functions.json");
  if (existsSync(functions)) {
    const text = readFileSync(functions, "utf8");
    writeFileSync(functions, text.replaceAll(DEVELOPMENT_ADDRESS, address.replace(/\/+$/, "")));
  }
  for (const [name, bytes] of renderIcons()) writeFileSync(join(folder, "assets", name), bytes);
}

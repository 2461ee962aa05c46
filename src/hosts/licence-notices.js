import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Licences of the packages that the modules of a script come from, whole, as they ask of whoever passes them on. Told by
 * what is in the script, so that no list has to be kept by hand.
 */
export function licenceNotices(modules) {
  const folders = modules.map(
    (file) => /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(file.replaceAll("\\", "/"))?.[1],
  );
  const unique = new Set(folders.filter((folder) => folder !== undefined));
  return [...unique].map(noticeOf).sort().join("\n");
}

function noticeOf(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const files = readdirSync(folder).filter((file) => /^(licen[cs]e|notice)/i.test(file));
  const texts = files.sort().map((file) => readFileSync(join(folder, file), "utf8").trim());
  const text = texts.join("\n\n") || "The package carries no text of its licence.";
  // A package of the grid states its licence in its file alone.
  const stated = license ?? (/^\s*Apache License\s+Version 2\.0/.test(text) ? "Apache-2.0" : "not stated");
  return `${"=".repeat(72)}\n${name} ${version}, licence: ${stated}\n\n${text}\n`;
}

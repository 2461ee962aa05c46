import { readFileSync } from "node:fs";
import { Resvg } from "@resvg/resvg-js";

/** One for each button; the drawings beside this file are called so. */
export const ICON_NAMES = ["pane", "compare", "bench"] as const;

/** Pixels: 16, 32 and 80 for the ribbon, 32 and 64 for the list of add-ins. */
export const ICON_SIZES = [16, 32, 64, 80] as const;

/** Every icon in every size as PNG, by file name, such as `pane-16.png`. */
export function renderIcons(): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  for (const name of ICON_NAMES) {
    const drawing = readFileSync(new URL(`${name}.svg`, import.meta.url), "utf8");
    for (const size of ICON_SIZES) {
      const picture = new Resvg(drawing, { fitTo: { mode: "width", value: size } });
      files.set(`${name}-${size}.png`, picture.render().asPng());
    }
  }
  return files;
}

import { readFileSync } from "node:fs";
import { type RenderedImage, Resvg } from "@resvg/resvg-js";
import { ICON_SETS, type IconColors, type IconSet } from "./icon-sets.ts";

/** One for each button; the drawings beside this file are called so. */
export const ICON_NAMES = ["pane", "compare", "bench"] as const;

/** Pixels: 16, 32 and 80 for the ribbon, 32 and 64 for the list of add-ins. */
export const ICON_SIZES = [16, 32, 64, 80] as const;

const SETS = Object.keys(ICON_SETS) as IconSet[];

/** Every icon in every size and set as PNG, by file name, such as `pane-16.png` and `pane-16-dark.png`. */
export function renderIcons(): Map<string, Uint8Array> {
  const each = ICON_NAMES.flatMap((name) =>
    ICON_SIZES.flatMap((size) => SETS.map((set) => ({ name, size, set }))),
  );
  return new Map(
    each.map(({ name, size, set }) => [
      `${name}-${size}${ICON_SETS[set].ending}.png`,
      renderIcon(name, size, set).asPng(),
    ]),
  );
}

/** One icon as pixels. */
export function renderIcon(name: string, size: number, set: IconSet): RenderedImage {
  const drawing = readFileSync(new URL(`${name}.svg`, import.meta.url), "utf8");
  return new Resvg(recolored(drawing, ICON_SETS[set].colors), {
    fitTo: { mode: "width", value: size },
  }).render();
}

function recolored(drawing: string, colors: IconColors): string {
  const drawn = ICON_SETS.any.colors;
  return (Object.keys(drawn) as (keyof IconColors)[]).reduce(
    (svg, part) => svg.replaceAll(drawn[part], colors[part]),
    drawing,
  );
}

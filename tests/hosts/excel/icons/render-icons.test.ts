import { describe, expect, test } from "vitest";
import { ICON_SETS, type IconSet } from "../../../../src/hosts/excel/icons/icon-sets.ts";
import {
  ICON_NAMES,
  ICON_SIZES,
  renderIcon,
  renderIcons,
} from "../../../../src/hosts/excel/icons/render-icons.ts";
import { contrast } from "../../../pane/contrast.ts";

/** Width, height and colour type of a PNG: bytes 16 to 25 (PNG specification, 11.2.2 IHDR). */
function header(png: Uint8Array): { signature: string; width: number; height: number; colors: number } {
  const view = Buffer.from(png);
  return {
    signature: view.toString("latin1", 1, 4),
    width: view.readUInt32BE(16),
    height: view.readUInt32BE(20),
    colors: view[25]!,
  };
}

const SETS = Object.keys(ICON_SETS) as IconSet[];
const EACH = SETS.flatMap((set) =>
  ICON_NAMES.flatMap((name) => ICON_SIZES.map((size) => [name, size, set] as const)),
);

/** Grounds that an icon may stand on: paper and the host's light and dark surfaces; the darkest is from memory. */
const LIGHT_GROUNDS = ["#ffffff", "#f3f2f1"];
const DARK_GROUNDS = ["#292929", "#1f1f1f", "#000000"];
const GROUNDS: Readonly<Record<IconSet, readonly string[]>> = {
  any: [...LIGHT_GROUNDS, ...DARK_GROUNDS],
  light: LIGHT_GROUNDS,
  dark: DARK_GROUNDS,
};

/** Source: WCAG 2.2, 1.4.11 Non-text Contrast. */
const LEAST_CONTRAST = 3;

describe("the icons", () => {
  const files = renderIcons();

  test("are there in every size and set, under the names that a manifest gives them", () => {
    expect(files.size).toBe(EACH.length);
    for (const [name, size, set] of EACH) {
      expect([...files.keys()]).toContain(`${name}-${size}${ICON_SETS[set].ending}.png`);
    }
  });

  test.each(EACH)("%s in %i pixels, set %s, is a square PNG with transparency", (name, size, set) => {
    const png = files.get(`${name}-${size}${ICON_SETS[set].ending}.png`)!;
    expect(header(png)).toEqual({ signature: "PNG", width: size, height: size, colors: 6 });
  });

  test("differ from each other, and from set to set", () => {
    const pictures = [...files.values()].map((png) => Buffer.from(png).toString("base64"));
    expect(new Set(pictures).size).toBe(pictures.length);
  });

  test.each(EACH)(
    "%s in %i pixels, set %s, stands out on its grounds, and what is drawn on its tile",
    (name, size, set) => {
      const { tile, drawn } = pixelsOf(name, size, set);
      for (const ground of GROUNDS[set]) {
        expect(contrast(tile, ground), `${tile} on ${ground}`).toBeGreaterThanOrEqual(LEAST_CONTRAST);
      }
      // Edges are blurred at 16 pixels; what is drawn must still be a good part of the picture.
      const seen = drawn.filter((color) => contrast(color, tile) >= LEAST_CONTRAST);
      expect(seen.length).toBeGreaterThan(0.06 * size * size);
    },
  );
});

/** The commonest colour of an icon, and the colours of all its other pixels that are not see-through. */
function pixelsOf(name: string, size: number, set: IconSet) {
  const { pixels } = renderIcon(name, size, set);
  const colors: string[] = [];
  for (let at = 0; at < pixels.length; at += 4) {
    if (pixels[at + 3] === 255) colors.push(`#${pixels.subarray(at, at + 3).toString("hex")}`);
  }
  const counts = new Map<string, number>();
  for (const color of colors) counts.set(color, (counts.get(color) ?? 0) + 1);
  const tile = [...counts].sort((a, b) => b[1] - a[1])[0]![0];
  return { tile, drawn: colors.filter((color) => color !== tile) };
}

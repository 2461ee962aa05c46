import { describe, expect, test } from "vitest";
import { ICON_NAMES, ICON_SIZES, renderIcons } from "../../../../src/hosts/excel/icons/render-icons.ts";

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

describe("the icons", () => {
  const files = renderIcons();

  test("are there in every size", () => {
    expect(files.size).toBe(ICON_NAMES.length * ICON_SIZES.length);
  });

  test.each(ICON_NAMES.flatMap((name) => ICON_SIZES.map((size) => [name, size] as const)))(
    "%s in %i pixels is a square PNG with transparency",
    (name, size) => {
      const png = files.get(`${name}-${size}.png`)!;
      expect(header(png)).toEqual({ signature: "PNG", width: size, height: size, colors: 6 });
    },
  );

  test("differ from each other", () => {
    const pictures = [...files.values()].map((png) => Buffer.from(png).toString("base64"));
    expect(new Set(pictures).size).toBe(pictures.length);
  });
});

import type { CellStyle as FileStyle } from "hucre";
import { type CellStyle, STYLES } from "../../../src/sheets/styles.ts";

/** How a cell of a file looks; nothing where it looks plain. What the file leaves to its default font is plain. */
export function lookOfFileStyle(style: FileStyle | undefined): CellStyle | undefined {
  const { plain } = STYLES;
  const { font, fill, alignment, border } = style ?? {};
  const sides = [border?.top, border?.right, border?.bottom, border?.left].filter(
    (side) => side !== undefined,
  );
  const look: CellStyle = {
    bold: font?.bold ?? false,
    italic: font?.italic ?? false,
    size: font?.size ?? plain.size,
    color: colorOf(font?.color?.rgb) ?? plain.color,
    align: (alignment?.horizontal ?? "general") as CellStyle["align"],
    vertical: alignment?.vertical === "top" ? "top" : "middle",
    wrap: alignment?.wrapText ?? false,
    border: sides.length === 4 ? "box" : border?.bottom ? "below" : border?.top ? "above" : "none",
    borderColor: colorOf(sides[0]?.color?.rgb) ?? plain.borderColor,
    ...(fill?.type === "pattern" && fill.fgColor ? { fill: colorOf(fill.fgColor.rgb) } : {}),
  };
  return JSON.stringify(sorted(look)) === JSON.stringify(sorted(plain)) ? undefined : look;
}

function colorOf(rgb: string | undefined): string | undefined {
  return rgb === undefined ? undefined : `#${rgb.toLowerCase()}`;
}

function sorted(look: CellStyle): unknown {
  return Object.entries(look).sort(([a], [b]) => (a < b ? -1 : 1));
}

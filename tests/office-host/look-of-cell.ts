import { type CellStyle, STYLES } from "../../src/sheets/styles.ts";
import { formatAt } from "./range.ts";
import type { HeldSheet, Paint } from "./workbook.ts";

/** How a cell looks after all the paint it was given; no look where it was never painted or is plain. */
export function lookOfCell(
  sheet: HeldSheet,
  row: number,
  column: number,
): { look?: CellStyle; format: string } {
  const format = String(formatAt(sheet, row, column));
  const coats = sheet.paints.filter(({ area: { row: top, column: left, rows, columns } }) => {
    return row >= top && row < top + rows && column >= left && column < left + columns;
  });
  const last = (property: string) => coats.findLast((coat) => coat.property === property)?.value;
  if (last("Format/Font/Color") === undefined) return { format };
  const sides = {
    top: borderOf(coats, (coat) => edge(coat, "Top", row === coat.area.row)),
    bottom: borderOf(coats, (coat) => edge(coat, "Bottom", row === coat.area.row + coat.area.rows - 1)),
    left: borderOf(coats, (coat) => edge(coat, "Left", column === coat.area.column)),
    right: borderOf(coats, (coat) =>
      edge(coat, "Right", column === coat.area.column + coat.area.columns - 1),
    ),
  };
  const drawn = Object.entries(sides).filter(([, color]) => color !== undefined);
  const kind = BORDERS[drawn.map(([side]) => side).join()];
  if (!kind) throw new Error(`no border of a plan has ${drawn.map(([side]) => side)}`);
  const fill = last("Format/Fill/Color");
  const look: CellStyle = {
    bold: last("Format/Font/Bold") === true,
    italic: last("Format/Font/Italic") === true,
    size: Number(last("Format/Font/Size")),
    color: String(last("Format/Font/Color")),
    ...(fill ? { fill: String(fill) } : {}),
    align: (last("Format/HorizontalAlignment") ?? "General").toString().toLowerCase() as CellStyle["align"],
    vertical: last("Format/VerticalAlignment") === "Top" ? "top" : "middle",
    wrap: last("Format/WrapText") === true,
    border: kind,
    borderColor: drawn[0]?.[1] ?? STYLES.plain.borderColor,
  };
  return JSON.stringify(look) === PLAIN ? { format } : { format, look };
}

const PLAIN = JSON.stringify({ ...STYLES.plain, fill: undefined });

const BORDERS: Readonly<Record<string, CellStyle["border"]>> = {
  "": "none",
  bottom: "below",
  top: "above",
  "top,bottom,left,right": "box",
};

/** The edge of an area a cell's side lies on: the outer one, or the inside lines. */
function edge(
  { property }: Paint,
  side: "Top" | "Bottom" | "Left" | "Right",
  outer: boolean,
): string | undefined {
  const inner = side === "Top" || side === "Bottom" ? "InsideHorizontal" : "InsideVertical";
  const path = `Format/Borders/${outer ? `Edge${side}` : inner}/`;
  return property.startsWith(path) ? property.slice(path.length) : undefined;
}

function borderOf(coats: readonly Paint[], part: (coat: Paint) => string | undefined): string | undefined {
  const last = (name: string) => coats.findLast((coat) => part(coat) === name)?.value;
  const style = last("Style");
  return style === undefined || style === "None" ? undefined : String(last("Color"));
}

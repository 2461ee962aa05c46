import type { Area, SheetPlan } from "../../sheets/plan.ts";
import { type CellStyle, STYLES } from "../../sheets/styles.ts";
import { CALL, type Step } from "./step.ts";
import { visibleParts } from "./visible-parts.ts";

/** Fonts, fills, borders and alignment of a sheet. */
export function writeLooks(sheet: SheetPlan): Step[] {
  return visibleParts(sheet.styles).map(({ area, style }) => ({
    bytes: 10 * CALL,
    queue: (desk) => paint(desk.range(sheet.name, area).format, STYLES[style], area),
  }));
}

/** Number formats of a sheet. */
export function writeFormats(sheet: SheetPlan): Step[] {
  return sheet.formats.map(({ area, format }) => ({
    bytes: CALL,
    queue: (desk) => {
      // A single format counts for all cells, which the declared type leaves out.
      desk.range(sheet.name, area).numberFormat = format as unknown as string[][];
    },
  }));
}

function paint(format: Excel.RangeFormat, style: CellStyle, area: Area): void {
  const { font } = format;
  font.color = style.color;
  font.size = style.size;
  if (style.bold) font.bold = true;
  if (style.italic) font.italic = true;
  if (style.fill) format.fill.color = style.fill;
  if (style.wrap) format.wrapText = true;
  format.verticalAlignment = style.vertical === "top" ? "Top" : "Center";
  if (style.align !== "general") format.horizontalAlignment = ALIGN[style.align];
  for (const edge of edgesOf(style.border, area)) {
    const border = format.borders.getItem(edge);
    border.style = "Continuous";
    border.color = style.borderColor;
  }
}

const ALIGN = { left: "Left", center: "Center", right: "Right" } as const;

type Edge = "EdgeTop" | "EdgeBottom" | "EdgeLeft" | "EdgeRight" | "InsideHorizontal" | "InsideVertical";

/** Edges of the area that give every cell in it the border. A single row has no inside line to set. */
function edgesOf(border: CellStyle["border"], { rows, columns }: Area): Edge[] {
  if (border === "none") return [];
  const across: Edge[] = rows > 1 ? ["InsideHorizontal"] : [];
  if (border === "below") return ["EdgeBottom", ...across];
  if (border === "above") return ["EdgeTop", ...across];
  const down: Edge[] = columns > 1 ? ["InsideVertical"] : [];
  return ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight", ...across, ...down];
}

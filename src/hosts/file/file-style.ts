import type { BorderSide, BorderStyle, CellStyle as FileStyle, FontStyle } from "hucre";
import type { ConditionStyleName } from "../../sheets/plan.ts";
import { type CellStyle, CONDITION_STYLES, STYLES } from "../../sheets/styles.ts";

/** The font of cells that nothing was painted on, the same as that of the style `plain`. */
export const FILE_FONT: FontStyle = {
  name: "Calibri",
  size: STYLES.plain.size,
  color: fileColor(STYLES.plain.color),
};

/** A cell's look in the words of the file. `format` and `text` say how its value is shown and kept. */
export function fileStyle(look: CellStyle | undefined, format: string | undefined): FileStyle {
  const style: FileStyle = format === undefined || format === "General" ? {} : { numFmt: format };
  if (!look) return style;
  style.font = { name: "Calibri", size: look.size, color: fileColor(look.color) };
  if (look.bold) style.font.bold = true;
  if (look.italic) style.font.italic = true;
  if (look.fill) style.fill = { type: "pattern", pattern: "solid", fgColor: fileColor(look.fill) };
  style.alignment = { vertical: look.vertical === "middle" ? "center" : "top" };
  if (look.align !== "general") style.alignment.horizontal = look.align;
  if (look.wrap) style.alignment.wrapText = true;
  const border = fileBorder(look);
  if (border) style.border = border;
  return style;
}

/** The look that a condition gives. Fills of conditions are told by their background colour, unlike those of cells. */
export function fileConditionStyle(name: ConditionStyleName): FileStyle {
  const { color, fill, bold, strike } = CONDITION_STYLES[name];
  const style: FileStyle = { font: { color: fileColor(color) } };
  if (bold) style.font!.bold = true;
  if (strike) style.font!.strikethrough = true;
  if (fill) {
    style.fill = { type: "pattern", pattern: "solid", fgColor: fileColor(fill), bgColor: fileColor(fill) };
  }
  return style;
}

function fileBorder({ border, borderColor }: CellStyle): BorderStyle | undefined {
  const side: BorderSide = { style: "thin", color: fileColor(borderColor) };
  switch (border) {
    case "none":
      return undefined;
    case "below":
      return { bottom: side };
    case "above":
      return { top: side };
    case "box":
      return { top: side, right: side, bottom: side, left: side };
  }
}

function fileColor(color: string): { rgb: string } {
  return { rgb: color.slice(1).toUpperCase() };
}

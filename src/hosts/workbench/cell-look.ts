import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { StyleName } from "../../sheets/plan.ts";
import { type CellStyle, STYLES } from "../../sheets/styles.ts";

const ALIGN = {
  general: HorizontalAlign.UNSPECIFIED,
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
};

/** A look and a number format as the grid stores them with a cell. */
export function gridLook(style: CellStyle, format?: string): IStyleData {
  const line = { s: BorderStyleTypes.THIN, cl: { rgb: style.borderColor } };
  const all = style.border === "box";
  return {
    fs: style.size,
    bl: style.bold ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    it: style.italic ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    cl: { rgb: style.color },
    ...(style.fill && { bg: { rgb: style.fill } }),
    ht: ALIGN[style.align],
    vt: style.vertical === "top" ? VerticalAlign.TOP : VerticalAlign.MIDDLE,
    tb: style.wrap ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW,
    ...(style.border !== "none" && {
      bd: {
        ...((all || style.border === "above") && { t: line }),
        ...((all || style.border === "below") && { b: line }),
        ...(all && { l: line, r: line }),
      },
    }),
    ...(format && { n: { pattern: format } }),
  };
}

/**
 * The house look nearest to what the grid stores: exactly the one that was painted, unless the user has changed the
 * cell since. Undefined for a cell that was never painted.
 */
export function houseLook(look: IStyleData | null | undefined): StyleName | undefined {
  if (!look || Object.keys(look).every((key) => key === "n")) return undefined;
  const names = Object.keys(STYLES) as StyleName[];
  const apart = (name: StyleName) => differences(gridLook(STYLES[name]), look);
  return names.reduce((best, name) => (apart(name) < apart(best) ? name : best));
}

const PARTS = ["fs", "bl", "it", "cl", "bg", "ht", "vt", "tb", "bd"] as const;

/** How many parts of two looks differ. */
function differences(one: IStyleData, other: IStyleData): number {
  return PARTS.filter((part) => said(one[part]) !== said(other[part])).length;
}

/** Nothing, 0 and "left as it is" are one and the same to the grid. */
function said(part: unknown): string {
  if (typeof part !== "object" || part === null) return String(part || 0);
  const entries = Object.entries(part).filter(([, value]) => value !== null && value !== undefined);
  if (entries.length === 0) return "0";
  return entries
    .sort(([a], [b]) => a.localeCompare(b))
    .map(([key, value]) => `${key}:${said(value).toLowerCase()}`)
    .join();
}

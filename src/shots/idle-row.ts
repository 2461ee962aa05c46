import { headerStrength, isUnitRow } from "./header-row.ts";
import { isMissing } from "./missing.ts";

const RULE = /^\s*[:|+=_*-]{3,}\s*$|^\s*[:=_]+-*[:=_]*\s*$/;

/** Why a row without any figure is no shot, where that can be told from the row alone; null where it cannot. */
export function idleRow(
  cells: readonly string[],
): "an empty row" | "a ruled line" | "a header" | "units" | null {
  const filled = cells.filter((cell) => cell.trim() !== "");
  if (filled.length === 0) return "an empty row";
  if (filled.every((cell) => RULE.test(cell))) return "a ruled line";
  if (filled.every(isMissing)) return "an empty row";
  if (headerStrength(cells) >= 2) return "a header";
  if (isUnitRow(cells)) return "units";
  return null;
}

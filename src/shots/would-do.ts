import type { FigureColumn } from "./figure-column.ts";
import { sideOf } from "./side-words.ts";

/** What would do in a column, for the sentence beside a cell that did not. */
export function wouldDo(column: FigureColumn): string {
  const number = `152${column.mark}3`;
  const unit = column.unit ? ` in ${UNIT_WORDS.get(column.unit) ?? column.unit}` : "";
  if (column.key === "smash") return `a number such as 1${column.mark}42 would do`;
  if (column.unit === "rpm") return `a number${unit} such as 2450 would do`;
  if (sideOf("L", column.key) === -1 && column.key !== "strikeY") {
    return `a number${unit} such as -12${column.mark}3 or 12${column.mark}3 L would do`;
  }
  if (column.unit === "degrees") return `a number${unit} such as 14${column.mark}2 would do`;
  return `a number${unit} such as ${column.key === "flightTime" ? `6${column.mark}1` : number} would do`;
}

const UNIT_WORDS: ReadonlyMap<string, string> = new Map([
  ["yd", "yards"],
  ["m", "metres"],
  ["ft", "feet"],
  ["s", "seconds"],
]);

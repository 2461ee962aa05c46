import { columnName } from "../../src/sheets/a1.ts";
import { COLUMNS, ROWS } from "./addresses.ts";

/** What stands in quotes or brackets is no reference to cells. */
const APART = String.raw`"(?:""|[^"])*"|'(?:''|[^'])*'|\[[^\]]*\]`;
const CELL = new RegExp(String.raw`${APART}|(?<![\w.])(\$?)([A-Z]{1,3})(\$?)([1-9]\d{0,6})(?![\w.(!])`, "gi");
const RELATIVE = new RegExp(
  String.raw`(?<![\w.])R(\d+|\[-?\d+\])?C(\d+|\[-?\d+\])?(?![\w.(![])|${APART}`,
  "g",
);
const WHOLE = /\$?[A-Z]{1,3}:\$?[A-Z]{1,3}(?![\w(])|(?<![\w$])\$?\d+:\$?\d+/i;

/** A formula of a cell with its references as R1C1 writes them: how far off, so that it may be entered elsewhere. */
export function relativeFormula(formula: string, row: number, column: number): string {
  // Whole columns and rows are written otherwise, and no formula that travels this way has them.
  if (WHOLE.test(formula.replace(new RegExp(APART, "g"), ""))) throw new Error(`not known here: ${formula}`);
  return formula.replace(CELL, (all, fixedColumn, letters, fixedRow, digits) => {
    if (letters === undefined) return all;
    const at = [...letters.toUpperCase()].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0) - 1;
    return `R${step(Number(digits) - 1, row, fixedRow)}C${step(at, column, fixedColumn)}`;
  });
}

/** The same with the names of the cells that it then reads. */
export function formulaAt(relative: string, row: number, column: number): string {
  return relative.replace(RELATIVE, (all: string, down?: string, across?: string) => {
    if (!/^R/.test(all)) return all;
    const [atRow, atColumn] = [place(down, row, ROWS), place(across, column, COLUMNS)];
    return `${isFixed(across)}${columnName(atColumn)}${isFixed(down)}${atRow + 1}`;
  });
}

function step(at: number, from: number, fixed: string): string {
  if (fixed) return String(at + 1);
  return at === from ? "" : `[${at - from}]`;
}

/** Beyond an edge it goes on from the other one. */
function place(given: string | undefined, from: number, count: number): number {
  if (given === undefined) return from;
  if (!given.startsWith("[")) return Number(given) - 1;
  return (from + Number(given.slice(1, -1)) + count) % count;
}

const isFixed = (given: string | undefined) => (given === undefined || given.startsWith("[") ? "" : "$");

/** A cell taken apart: what stands before the number, the number with its marks, what stands behind. */
export interface FigureParts {
  readonly before: string;
  readonly sign: "" | "+" | "-";
  /** Digits, marks and single spaces only. */
  readonly digits: string;
  readonly behind: string;
}

const SPACES = /[\s\u00a0\u2007\u2009\u202f]+/g;
const MINUS = /[\u2010-\u2015\u2212\ufe63\uff0d]/g;
const PARTS = /^([^\d+\-.,]*)([+-]?) ?([.,]?\d(?:[\d.,'’ ]*\d)?[.,]?)(?!\d)(.*)$/;

/**
 * Takes a cell apart around its number; null where it holds none, or more than one. Every kind of minus sign counts
 * as one, every kind of space as a space, and brackets round the whole as a minus sign.
 *
 * @example figureParts("12,3 yd L") // { before: "", sign: "", digits: "12,3", behind: "yd L" }
 */
export function figureParts(cell: string): FigureParts | null {
  if (cell.length > 60) return null;
  let text = cell.replace(SPACES, " ").trim().replace(MINUS, "-");
  const bracketed = /^\(([^()+-]*)\)$/.exec(text);
  if (bracketed) text = `-${bracketed[1]!.trim()}`;
  const found = PARTS.exec(text);
  if (!found) return null;
  const [, before, sign, digits, behind] = found as unknown as [
    string,
    string,
    "" | "+" | "-",
    string,
    string,
  ];
  if (/\d/.test(behind)) return null;
  return { before: before.trim(), sign, digits, behind: behind.replace(/([°º])(?=\S)/, "$1 ").trim() };
}

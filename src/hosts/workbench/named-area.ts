import type { NamedArea } from "../../sheets/plan.ts";

/** A name that stands for one area of one sheet, as a plan says it; nothing for names of other things. */
export function namedArea(name: string, reference: string): NamedArea[] {
  const found = /^=?(?:'((?:[^']|'')+)'|([^'!]+))!\$?([A-Z]+)\$?(\d+)(?::\$?([A-Z]+)\$?(\d+))?$/i.exec(
    reference,
  );
  if (!found) return [];
  const [, quoted, bare, left, top, right = left, bottom = top] = found;
  const [row, column] = [Number(top) - 1, columnOf(left!)];
  const area = { row, column, rows: Number(bottom) - row, columns: columnOf(right!) - column + 1 };
  return [{ name, at: { sheet: quoted?.replaceAll("''", "'") ?? bare!, area } }];
}

function columnOf(letters: string): number {
  return [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

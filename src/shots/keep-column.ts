const words = (list: string) => new Set(list.split(" "));

const TICK = words("x ✓ ✔ ☑ ✅ ☒");
const YES = words("yes y true 1 keep kept use used in ok ja j wahr oui vrai si sí s verdadero");
const NO = words("no n false 0 ☐ ✗ ✘ ❌ out exclude excluded skip nein falsch non faux falso");

export interface KeepReading {
  readonly keep: boolean[];
  /** Places of cells that say neither yes nor no; such a shot is kept. */
  readonly unclear: number[];
}

/**
 * Reads a column that says which shots count. A blank keeps its shot, unless the column is ticked (x, ✓): where some
 * shots carry a tick, one without is left out.
 */
export function readKeepColumn(cells: readonly string[]): KeepReading {
  const plain = cells.map((cell) => cell.trim().toLowerCase());
  const ticked = plain.some((cell) => TICK.has(cell));
  const unclear: number[] = [];
  const keep = plain.map((cell, index) => {
    if (cell === "" || cell === "-") return !ticked;
    if (TICK.has(cell) || YES.has(cell)) return true;
    if (NO.has(cell)) return false;
    unclear.push(index);
    return true;
  });
  return { keep, unclear };
}

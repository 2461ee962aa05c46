import type { CellStyle as FileStyle } from "hucre";
import type { Area, SheetPlan } from "../../sheets/plan.ts";
import { STYLES } from "../../sheets/styles.ts";
import { fileStyle } from "./file-style.ts";

/** Rows next to each other that are painted alike. */
export interface Band {
  readonly row: number;
  readonly rows: number;
  /** By column; nothing where a cell was never painted. */
  readonly styles: readonly (FileStyle | undefined)[];
}

/**
 * Looks and number formats of a sheet, painted in their order, as bands of rows. A long table is a band or two, so
 * that its look is found once and not for each of its cells.
 */
export function paintedBands(sheet: SheetPlan): readonly Band[] {
  const areas = [...sheet.styles, ...sheet.formats].map(({ area }) => area);
  const edges = [...new Set(areas.flatMap(({ row, rows }) => [row, row + rows]))].sort((a, b) => a - b);
  const made = new Map<string, FileStyle>();
  const [stylesAt, formatsAt] = [downwards(sheet.styles), downwards(sheet.formats)];
  return edges.slice(0, -1).map((row, i) => {
    const [styled, formatted] = [stylesAt(row), formatsAt(row)];
    const columns = [...styled, ...formatted].reduce(
      (most, { area }) => Math.max(most, area.column + area.columns),
      0,
    );
    const looks = painted(columns, styled, ({ style }) => style);
    const formats = painted(columns, formatted, ({ format }) => format);
    const styles = Array.from({ length: columns }, (_, column) => {
      const look = looks[column];
      const format = formats[column];
      if (look === undefined && format === undefined) return undefined;
      const key = `${look} ${format}`;
      const style = made.get(key) ?? fileStyle(look && STYLES[look], format);
      made.set(key, style);
      return style;
    });
    return { row, rows: edges[i + 1]! - row, styles };
  });
}

/** What each cell of a row shows after all areas were painted one over the other. */
function painted<T extends { readonly area: Area }, Value>(
  columns: number,
  areas: readonly T[],
  value: (area: T) => Value,
): readonly (Value | undefined)[] {
  const line = new Array<Value | undefined>(columns).fill(undefined);
  for (const each of areas) {
    const { column, columns: width } = each.area;
    line.fill(value(each), column, column + width);
  }
  return line;
}

/**
 * Answers which areas cover a row, in the order in which they are painted. Rows have to be asked for from top to bottom:
 * only the areas at hand are looked at again, for a sheet that was written cell by cell has a hundred thousand.
 */
function downwards<T extends { readonly area: Area }>(all: readonly T[]): (row: number) => readonly T[] {
  const rising = [...all.entries()].sort(([, a], [, b]) => a.area.row - b.area.row);
  let next = 0;
  let atHand: [number, T][] = [];
  return (row) => {
    atHand = atHand.filter(([, { area }]) => row < area.row + area.rows);
    const before = atHand.length;
    for (; next < rising.length && rising[next]![1].area.row <= row; next++) atHand.push(rising[next]!);
    if (atHand.length > before) atHand.sort(([a], [b]) => a - b);
    return atHand.map(([, one]) => one);
  };
}

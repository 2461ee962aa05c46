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
  return edges.slice(0, -1).map((row, i) => {
    const columns = Math.max(
      0,
      ...areas.filter((area) => covers(area, row)).map((a) => a.column + a.columns),
    );
    const looks = painted(columns, row, sheet.styles, ({ style }) => style);
    const formats = painted(columns, row, sheet.formats, ({ format }) => format);
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
  row: number,
  areas: readonly T[],
  value: (area: T) => Value,
): readonly (Value | undefined)[] {
  const line = new Array<Value | undefined>(columns).fill(undefined);
  for (const each of areas) {
    const { column, columns: width } = each.area;
    if (covers(each.area, row)) line.fill(value(each), column, column + width);
  }
  return line;
}

function covers(area: Area, row: number): boolean {
  return row >= area.row && row < area.row + area.rows;
}

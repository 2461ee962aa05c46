import type { Area } from "../../src/sheets/plan.ts";
import { COLUMNS, overlap } from "./addresses.ts";
import { spillsOn } from "./spills.ts";
import type { HeldSheet, HeldWorkbook } from "./workbook.ts";

/** The least area within `within` that holds all cells with something in them. */
export function usedArea(workbook: HeldWorkbook, sheet: HeldSheet, within: Area): Area | undefined {
  let used: Area | undefined;
  for (const at of filledCells(workbook, sheet)) {
    if (overlap(at, within)) used = used ? around(used, at) : at;
  }
  return used;
}

/** The least area with an empty edge all round: grows until nothing touches it, as the service's does. */
export function surroundingRegion(workbook: HeldWorkbook, sheet: HeldSheet, start: Area): Area {
  let region = start;
  for (;;) {
    const row = Math.max(0, region.row - 1);
    const column = Math.max(0, region.column - 1);
    const rows = region.row + region.rows + 1 - row;
    const columns = region.column + region.columns + 1 - column;
    let grown = region;
    for (const at of filledCells(workbook, sheet)) {
      if (overlap(at, { row, column, rows, columns })) grown = around(grown, at);
    }
    if (grown.rows === region.rows && grown.columns === region.columns) return region;
    region = grown;
  }
}

/** The least area that holds both. */
export function around(a: Area, b: Area): Area {
  const row = Math.min(a.row, b.row);
  const column = Math.min(a.column, b.column);
  return {
    row,
    column,
    rows: Math.max(a.row + a.rows, b.row + b.rows) - row,
    columns: Math.max(a.column + a.columns, b.column + b.columns) - column,
  };
}

function* filledCells(workbook: HeldWorkbook, sheet: HeldSheet): Generator<Area> {
  for (const { area, blocked } of spillsOn(workbook, sheet)) if (!blocked) yield area;
  for (const key of sheet.cells.keys()) {
    yield { row: Math.floor(key / COLUMNS), column: key % COLUMNS, rows: 1, columns: 1 };
  }
}

import { columnName } from "../../sheets/a1.ts";
import type { SheetPlan } from "../../sheets/plan.ts";
import { showsGridlines } from "../../sheets/shows-gridlines.ts";
import { CALL, type Step } from "./step.ts";

/** Widest digit of the default font and the padding of a cell, in pixels (ECMA-376 part 1, 18.3.1.13). */
const DIGIT_PIXELS = 7;
const PADDING_PIXELS = 5;
const POINTS_A_PIXEL = 0.75;

/** Points of a column that shows so many characters: 8.43 characters are 64 pixels, or 48 points. */
function pointsOfCharacters(characters: number): number {
  return (characters * DIGIT_PIXELS + PADDING_PIXELS) * POINTS_A_PIXEL;
}

/** Widths, heights, merged cells, what stays in view, and whether the grid shows. */
export function writeLayout(sheet: SheetPlan): Step[] {
  const { name, widths, heights, merges, frozen } = sheet;
  const step = (queue: Step["queue"]): Step => ({ bytes: 2 * CALL, queue });
  return [
    ...widths.map(({ column, columns, characters }) =>
      step((desk) => {
        const address = `${columnName(column)}:${columnName(column + columns - 1)}`;
        desk.sheet(name).getRange(address).format.columnWidth = pointsOfCharacters(characters);
      }),
    ),
    ...heights.map(({ row, rows, points }) =>
      step((desk) => {
        desk.sheet(name).getRange(`${row + 1}:${row + rows}`).format.rowHeight = points;
      }),
    ),
    ...merges.map((area) => step((desk) => desk.range(name, area).merge(false))),
    ...(showsGridlines(sheet)
      ? []
      : [
          step((desk) => {
            desk.sheet(name).showGridlines = false;
          }),
        ]),
    ...(frozen ? [step((desk) => freeze(desk.sheet(name), frozen))] : []),
  ];
}

function freeze(sheet: Excel.Worksheet, { rows, columns }: NonNullable<SheetPlan["frozen"]>): void {
  const { freezePanes } = sheet;
  if (rows > 0 && columns > 0) freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, rows, columns));
  else if (rows > 0) freezePanes.freezeRows(rows);
  else if (columns > 0) freezePanes.freezeColumns(columns);
}

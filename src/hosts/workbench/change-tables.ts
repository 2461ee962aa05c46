import { CellValueType, type ICellData, IUndoRedoService, type Nullable } from "@univerjs/core";
import { SetWorksheetColumnCountMutation, SetWorksheetRowCountMutation } from "@univerjs/preset-sheets-core";
import { invalid, isProblem, type Outcome, type Problem, unavailable } from "../../outcome/problem.ts";
import type { Area, WorkbookPlan } from "../../sheets/plan.ts";
import { isAsExpected, isIdle, type TableCell, type TableChange } from "../../sheets/table-change.ts";
import type { Run, Written } from "../host.ts";
import type { Grid, Sheet, Workbook } from "./grid.ts";
import { type Cells, cellsStep, type GridStep, tableStep, takeStep } from "./grid-step.ts";
import { readCells } from "./read-cells.ts";
import type { Memory } from "./remembered.ts";
import { tableOf } from "./table-cells.ts";
import { writePlan } from "./write-plan.ts";

/**
 * Changes tables in the grid, then adds the plan's sheets; where any step fails, what stood before is put back. What
 * became of the tables is one step on the grid's list of what can be undone.
 */
export async function changeTables(
  grid: Grid,
  workbook: Workbook,
  memory: Memory,
  changes: readonly TableChange[],
  create: WorkbookPlan | null,
  run: Run = {},
): Promise<Outcome<Written>> {
  const work: Planned[] = [];
  for (const change of changes.filter((one) => !isIdle(one))) {
    const planned = planOf(workbook, change);
    if (isProblem(planned)) return planned;
    work.push(planned);
  }
  const done: Planned[] = [];
  const takeBack = async () => {
    for (const { back } of done.reverse()) for (const step of back) await takeStep(grid, step);
  };
  try {
    for (const one of work) {
      run.signal?.throwIfAborted();
      done.push(one);
      await makeRoom(grid, one);
      for (const step of one.forth) await takeStep(grid, step);
      const { rows, columns } = tableOf(workbook, one.table)?.area ?? {};
      if (rows !== one.grown.rows || columns !== one.grown.columns) {
        throw new Error(`the grid did not let the table ${one.table} grow`);
      }
      run.progress?.(done.length / (work.length + 1));
    }
  } catch (error) {
    await takeBack();
    if (run.signal?.aborted) return unavailable("Stopped; the tables are as they were.");
    const why = error instanceof Error ? error.message : String(error);
    return unavailable(`The page could not change the tables, and put back what it had begun: ${why}`);
  }
  const written: Outcome<Written> = create
    ? await writePlan(grid, workbook, memory, create, run)
    : { sheets: [], notes: [] };
  if (isProblem(written)) await takeBack();
  else if (done.length > 0) rememberUndo(workbook, done);
  return written;
}

function rememberUndo(workbook: Workbook, done: readonly Planned[]): void {
  done[0]!.sheet
    .getInject()
    .get(IUndoRedoService)
    .pushUndoRedo({
      unitID: workbook.getId(),
      undoMutations: [...done].reverse().flatMap(({ back }) => back),
      redoMutations: done.flatMap(({ forth }) => forth),
    });
}

/** A change as steps to take, steps that take them back, and where the table ends afterwards. */
interface Planned {
  readonly table: string;
  readonly sheet: Sheet;
  readonly grown: Area;
  readonly forth: readonly GridStep[];
  readonly back: readonly GridStep[];
}

function planOf(workbook: Workbook, change: TableChange): Planned | Problem {
  const found = tableOf(workbook, change.table);
  if (!found) return unavailable(`There is no table "${change.table}" any more.`);
  const { id, sheet, area } = found;
  const headings = readCells(sheet, { ...area, rows: 1 })[0]!.map((cell) => String(cell ?? ""));
  if (!isAsExpected(change, headings, area.rows - 1)) {
    return invalid(
      `The table "${change.table}" has changed in the meantime; nothing was written. Try again.`,
    );
  }
  const rows = Math.max(2, area.rows - change.remove.length + change.append.length);
  const grown = { ...area, rows, columns: area.columns + change.columns.length };
  const matrix = sheet.getSheet().getCellMatrix();
  const standing = (row: number, column: number) => matrix.getValue(row, column) ?? null;
  const [after, before]: [Cells, Cells] = [{}, {}];
  const set = (row: number, column: number, cell: Nullable<ICellData>) => {
    after[row] ??= {};
    before[row] ??= {};
    after[row][column] = cell;
    before[row][column] = whole(standing(row, column));
  };
  const { row: top, column: left } = area;
  for (const { column, heading } of change.rename) {
    set(top, left + column, valueCell(heading, standing(top, left + column)));
  }
  for (const [c, { heading }] of change.columns.entries()) {
    set(top, left + area.columns + c, { v: heading, t: CellValueType.STRING });
  }
  const gone = new Set(change.remove);
  const given = new Map(change.update.map(({ row, cells }) => [row, cells]));
  const first = Math.min(
    change.remove[0] ?? Number.POSITIVE_INFINITY,
    ...(gone.size > 0 ? given.keys() : []),
  );
  let next = gone.size > 0 ? first : area.rows - 1;
  for (let row = gone.size > 0 ? first : area.rows; row < area.rows - 1; row++) {
    if (gone.has(row)) continue;
    for (let c = 0; c < area.columns; c++) {
      const cell = given.get(row)?.[c];
      const was = whole(standing(top + 1 + row, left + c));
      set(top + 1 + next, left + c, cell === undefined ? was : valueCell(cell, was));
    }
    next++;
  }
  if (gone.size === 0) {
    for (const { row, cells } of change.update) {
      for (const [c, cell] of cells.entries()) {
        if (cell !== undefined)
          set(top + 1 + row, left + c, valueCell(cell, standing(top + 1 + row, left + c)));
      }
    }
  }
  const patterns = change.columns.map(({ format }) => ({ s: { n: { pattern: format } } }));
  const model = Array.from({ length: area.columns }, (_, c) => ({
    s: standing(top + area.rows - 1, left + c)?.s,
  }));
  const looks = [...model, ...patterns];
  for (const cells of change.append) {
    for (const [c, cell] of cells.entries()) {
      if (cell !== null)
        set(top + 1 + next, left + c, { ...looks[c], ...valueCell(cell, null) } as ICellData);
    }
    next++;
  }
  for (; next < area.rows - 1; next++) {
    for (let c = 0; c < area.columns; c++) {
      // A table keeps its first row when all have gone, and that keeps its formats for the next session.
      const kept = next === 0 ? valueCell(null, standing(top + 1, left + c)) : null;
      set(top + 1 + next, left + c, kept);
    }
  }
  const inTheWay = obstacle(sheet, area, grown);
  if (inTheWay) {
    return invalid(`Something stands where the table "${change.table}" has to grow; move it and try again.`);
  }
  const sized = grown.rows !== area.rows || grown.columns !== area.columns;
  const steps = (cells: Cells, end: Area) => [
    cellsStep(sheet, cells),
    ...(sized ? [tableStep(sheet, id, end)] : []),
  ];
  return { table: change.table, sheet, grown, forth: steps(after, grown), back: steps(before, area) };
}

/** All of a cell, so that putting it back leaves nothing of what was written over it. */
function whole(cell: Nullable<ICellData>): Nullable<ICellData> {
  return cell ? { f: null, si: null, p: null, v: null, t: null, s: null, ...cell } : null;
}

function valueCell(cell: TableCell, was: Nullable<ICellData>): ICellData {
  const look = was?.s ? { s: was.s } : {};
  if (cell === null) return { ...look, v: null, f: null, si: null, p: null };
  const t =
    typeof cell === "number"
      ? CellValueType.NUMBER
      : typeof cell === "boolean"
        ? CellValueType.BOOLEAN
        : CellValueType.STRING;
  return { ...look, v: typeof cell === "boolean" ? Number(cell) : cell, t };
}

/** Whether anything stands in the rows and columns that a table is to grow over. */
function obstacle(sheet: Sheet, area: Area, grown: Area): boolean {
  const matrix = sheet.getSheet().getCellMatrix();
  const filled = (row: number, column: number) => {
    const cell = matrix.getValue(row, column);
    return cell !== null && cell !== undefined && ((cell.v ?? "") !== "" || (cell.f ?? "") !== "");
  };
  for (let row = area.row; row < grown.row + grown.rows; row++) {
    const from = row < area.row + area.rows ? area.columns : 0;
    for (let c = from; c < grown.columns; c++) if (filled(row, area.column + c)) return true;
  }
  return false;
}

/** Rows and columns enough for the table, and some to type in; they stay when the change is undone. */
async function makeRoom(grid: Grid, { sheet, grown }: Planned): Promise<void> {
  const place = { unitId: sheet.getWorkbook().getUnitId(), subUnitId: sheet.getSheetId() };
  const rows = grown.row + grown.rows + 60;
  const columns = grown.column + grown.columns + 4;
  // Adding rows to a long sheet takes the grid long, so it gets room for many sessions at once.
  const rowCount = rows + Math.ceil(rows / 50);
  if (sheet.getMaxRows() < rows)
    await takeStep(grid, { id: SetWorksheetRowCountMutation.id, params: { ...place, rowCount } });
  if (sheet.getMaxColumns() < columns)
    await takeStep(grid, {
      id: SetWorksheetColumnCountMutation.id,
      params: { ...place, columnCount: columns },
    });
}

import { invalid, isProblem, type Outcome, type Problem, unavailable } from "../outcome/problem.ts";
import {
  type ArgumentSpec,
  isList,
  isMissing,
  numberList,
  type SingleValue,
  singleValue,
  spills,
  textList,
  tickList,
} from "./argument.ts";
import { type Cell, type Grid, gridOf } from "./cell.ts";

/** Checked arguments, in the order of the table: single values, or lists for list arguments (null: left out). */
export type Checked = any[];

/** A custom function before any host: its name, its table of arguments, and what it answers. */
export interface FunctionSpec {
  /** Workbook name without the namespace, as in `SWINGWEIGHT.MOMENT`. */
  readonly id: string;
  readonly arguments: readonly ArgumentSpec[];
  /**
   * - `one`: a single value; ranges spill element by element.
   * - `row`: a row of values under `headings`; a column of arguments gives a row each.
   * - `like`: one value for each cell of the first argument, in its shape.
   * - `table`: rows as they are.
   */
  readonly shape: "one" | "row" | "like" | "table";
  /** Names of a row's values; also shown above where the caller asks for headings. */
  readonly headings?: readonly string[];
  /** A worked example, shown on the function page and held to its answer by a test. */
  readonly example: Example;
  readonly answer: (...checked: Checked) => Outcome<Cell | readonly Cell[] | readonly (readonly Cell[])[]>;
}

export interface Example {
  /** What is handed over: single values, or ranges as rows of cells. */
  readonly call: readonly unknown[];
  /** What it answers, a single value or rows of cells; figures as they are shown, to the digits given. */
  readonly answer: string | number | readonly (readonly (string | number | boolean)[])[];
  /** Where the figures come from. */
  readonly source: string;
}

/** The last argument of every row answer. */
const HEADINGS: ArgumentSpec = {
  name: "headings",
  kind: "flag",
  expects: "TRUE for a row of headings above, or FALSE",
  otherwise: false,
};

/** All arguments of a function, with `headings` where it answers rows. */
export function argumentsOf(spec: FunctionSpec): readonly ArgumentSpec[] {
  return spec.shape === "row" ? [...spec.arguments, HEADINGS] : spec.arguments;
}

/** Answers a call with raw cells from a host. Never throws; single arguments in, a single value out. */
export function callFunction(spec: FunctionSpec, raw: readonly unknown[]): Cell | Cell[][] {
  const grid = answerGrid(spec, raw);
  const single = grid.length === 1 && grid[0]!.length === 1 && !raw.some(Array.isArray);
  return single ? grid[0]![0]! : grid;
}

function answerGrid(spec: FunctionSpec, raw: readonly unknown[]): Cell[][] {
  const all = argumentsOf(spec);
  if (raw.length > all.length) return [[invalid(`${spec.id} takes at most ${all.length} arguments.`)]];
  const lists = all.map((argument, i) => (isList(argument) ? checkedList(argument, raw[i]) : null));
  const refused = lists.find(isProblem);
  if (refused) return [[refused]];
  const flags = all.map((argument, i) => (argument.kind === "flag" ? flagOf(argument, raw[i]) : null));
  const refusedFlag = flags.find(isProblem);
  if (refusedFlag) return [[refusedFlag]];

  const grids = all.map((argument, i) => (spills(argument) ? gridOf(raw[i]) : [[null]]));
  const rows = Math.max(...grids.map((grid) => grid.length));
  const columns = Math.max(...grids.map((grid) => grid[0]?.length ?? 0));
  // The function's own arguments; `headings` of a row answer is none of them.
  const own = spec.arguments.map((argument, i) => ({
    argument,
    grid: spills(argument) ? grids[i]! : null,
    ranged: spills(argument) && (grids[i]!.length > 1 || (grids[i]![0]?.length ?? 0) > 1),
    rest: isList(argument) ? lists[i] : flags[i],
  }));
  const answerAt = (row: number, column: number) => answerOne(spec, own, row, column);

  if (spec.shape === "one") {
    return times(rows, (row) => times(columns, (column) => asCell(answerAt(row, column))));
  }
  if (columns > 1)
    return [[invalid(`${spec.id} answers a row for each call: give one column of values, not several.`)]];
  const answers = times(rows, (row) => answerAt(row, 0));
  if (spec.shape === "row") {
    const width = spec.headings!.length;
    const body = answers.map((answer) => asRow(answer, width));
    if (rows === 1 && isProblem(answers[0])) return [[answers[0]]];
    return flags.at(-1) === true ? [[...spec.headings!], ...body] : body;
  }
  const answer = answers[0]!;
  if (isProblem(answer)) return [[answer]];
  if (spec.shape === "table") return (answer as Cell[][]).map((row) => [...row]);
  return likeGrid(gridOf(raw[0]), answer as readonly Cell[]);
}

function checkedList(argument: ArgumentSpec, raw: unknown): Outcome<number[] | string[] | boolean[] | null> {
  if (raw === undefined || raw === null) {
    return argument.otherwise === null
      ? null
      : invalid(`${argument.name} is missing; it should be ${argument.expects}.`);
  }
  if (argument.kind === "numbers") return numberList(argument, raw);
  return argument.kind === "texts" ? textList(raw) : tickList(argument, raw);
}

function flagOf(argument: ArgumentSpec, raw: unknown): Outcome<SingleValue> {
  return singleValue(argument, gridOf(raw)[0]?.[0]);
}

/** As native functions spread ranges: a single row or column serves all; beyond a range's end there is nothing. */
function cellAt(grid: Grid, row: number, column: number): unknown {
  const r = grid.length === 1 ? 0 : row;
  const c = (grid[0]?.length ?? 0) === 1 ? 0 : column;
  if (r >= grid.length || c >= grid[0]!.length) return BEYOND;
  return grid[r]![c];
}

const BEYOND = Symbol("beyond the end of a range");

/** One argument of a call: the range its cells come from, or what all cells share. */
interface Given {
  readonly argument: ArgumentSpec;
  readonly grid: Grid | null;
  /** Whether it is a range of more than one cell. */
  readonly ranged: boolean;
  readonly rest: unknown;
}

function answerOne(
  spec: FunctionSpec,
  given: readonly Given[],
  row: number,
  column: number,
): Cell | Problem | readonly Cell[] | readonly (readonly Cell[])[] {
  const cells: unknown[] = [];
  let ranges = 0;
  let blanks = 0;
  let zeros = 0;
  for (const { argument, grid, ranged, rest } of given) {
    const cell = grid ? cellAt(grid, row, column) : rest;
    if (cell === BEYOND) return unavailable("The ranges differ in length; there is no value here.");
    if (ranged) {
      ranges++;
      if (isMissing(argument, cell)) blanks++;
      else if (cell === 0) zeros++;
    }
    cells.push(cell);
  }
  // An empty row inside a range answers empty, so that a formula over a whole column stays quiet below the data. Where
  // blanks arrive as 0 an angle of 0 cannot be told from one; beside a quantity that is surely blank it is taken for it.
  if (blanks > 0 && blanks + zeros === ranges) return "";
  for (let i = 0; i < given.length; i++) {
    if (!given[i]!.grid) continue;
    const value = singleValue(given[i]!.argument, cells[i]);
    if (isProblem(value)) return value;
    cells[i] = value;
  }
  return spec.answer(...cells);
}

function asCell(answer: unknown): Cell {
  return answer as Cell;
}

function asRow(answer: unknown, width: number): Cell[] {
  if (Array.isArray(answer)) return answer as Cell[];
  return times(width, () => (isProblem(answer) ? answer : ""));
}

function likeGrid(grid: Grid, answers: readonly Cell[]): Cell[][] {
  let next = 0;
  return grid.map((row) => row.map(() => answers[next++] ?? ""));
}

/** A plain loop: `Array.from` takes several times as long for a column of many rows of one cell. */
function times<T>(count: number, make: (place: number) => T): T[] {
  const list: T[] = [];
  for (let place = 0; place < count; place++) list.push(make(place));
  return list;
}

import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { gridOf, isBlank, quoted, type RawCell } from "./cell.ts";

/**
 * What an argument of a function is: the one table from which all arguments are checked.
 *
 * - `number`, `text`, `numberOrText`: one value; a range of them spills.
 * - `numbers`, `texts`, `ticks`: a list by nature; the whole range is one argument.
 * - `flag`: TRUE or FALSE for the whole call.
 */
export interface ArgumentSpec {
  readonly name: string;
  readonly kind: "number" | "text" | "numberOrText" | "numbers" | "texts" | "ticks" | "flag";
  /** How a message says what would do: "a weight in grams above 0". */
  readonly expects: string;
  readonly least?: number;
  readonly most?: number;
  /** Exclusive lower bound. */
  readonly above?: number;
  /** Only one of these, in any case. */
  readonly choices?: readonly string[];
  /** Taken where the argument is left out; an argument without it must be given. */
  readonly otherwise?: number | string | boolean | null;
  /**
   * A quantity that cannot be 0: a 0 is a blank cell in disguise, since one platform hands blanks over as 0.
   */
  readonly zeroIsBlank?: boolean;
}

/** A single value for `number`, `text`, `numberOrText` and `flag`. Null is a blank where that is allowed. */
export type SingleValue = number | string | boolean | null;

/** Whether the argument is a list by nature, so that a range of it is one argument. */
export function isList(spec: ArgumentSpec): boolean {
  return spec.kind === "numbers" || spec.kind === "texts" || spec.kind === "ticks";
}

/** Whether a range of the argument spills, element by element. */
export function spills(spec: ArgumentSpec): boolean {
  return !isList(spec) && spec.kind !== "flag";
}

/** Whether this cell counts as nothing for this argument. */
export function isMissing(spec: ArgumentSpec, cell: RawCell): boolean {
  return isBlank(cell) || (spec.zeroIsBlank === true && cell === 0);
}

/** One cell, checked against its line of the table. */
export function singleValue(spec: ArgumentSpec, cell: RawCell): Outcome<SingleValue> {
  if (isMissing(spec, cell)) {
    if (spec.otherwise !== undefined) return spec.otherwise;
    return invalid(`${spec.name} is blank; it should be ${spec.expects}.`);
  }
  const value = fitting(spec, cell);
  return value ?? invalid(`${spec.name} is ${found(spec, cell)}; it should be ${spec.expects}.`);
}

/** The cell as a message tells it. A figure that is text looks like one that would do, so the message says it is text. */
function found({ kind }: ArgumentSpec, cell: RawCell): string {
  const isFigure = typeof cell === "string" && /^[-+]?\d[\d.,]*$/.test(cell.trim());
  return isFigure && kind !== "text" ? `${quoted(cell)}, which is text and no number` : quoted(cell);
}

/** The cell as the argument takes it; null where it does not. */
function fitting(spec: ArgumentSpec, cell: RawCell): SingleValue {
  if (spec.kind === "flag") {
    if (typeof cell === "boolean") return cell;
    return typeof cell === "number" ? cell !== 0 : null;
  }
  if (spec.kind === "text" || (spec.kind === "numberOrText" && typeof cell === "string")) {
    const text = String(cell).trim();
    if (typeof cell === "boolean") return null;
    if (spec.choices && !spec.choices.includes(text.toLowerCase())) return null;
    return spec.choices ? text.toLowerCase() : text;
  }
  if (typeof cell !== "number" || !Number.isFinite(cell)) return null;
  if (spec.least !== undefined && cell < spec.least) return null;
  if (spec.most !== undefined && cell > spec.most) return null;
  if (spec.above !== undefined && cell <= spec.above) return null;
  return cell;
}

/** A list of numbers, NaN where a cell is blank, in reading order. Text in it is a problem. */
export function numberList(spec: ArgumentSpec, argument: unknown): Outcome<number[]> {
  const list: number[] = [];
  for (const cell of gridOf(argument).flat()) {
    if (isMissing(spec, cell)) {
      list.push(Number.NaN);
      continue;
    }
    const item: ArgumentSpec = {
      ...spec,
      name: `${spec.name}: item ${list.length + 1}`,
      kind: "number",
      expects: `a number${spec.above === undefined ? "" : ` above ${spec.above}`}, or blank`,
    };
    const value = singleValue(item, cell);
    if (isProblem(value)) return value;
    list.push(value as number);
  }
  return list;
}

/** A list of texts, "" where a cell is blank (or 0, as one platform hands blanks over). */
export function textList(argument: unknown): string[] {
  return gridOf(argument)
    .flat()
    .map((cell) => (isBlank(cell) || cell === 0 ? "" : String(cell).trim()));
}

const YES = new Set(["true", "yes", "y", "x", "1", "✓", "keep"]);
const NO = new Set(["false", "no", "n", "0", ""]);

/** A list of ticks. A blank is no tick: where blanks arrive as 0 they could not be told from FALSE anyway. */
export function tickList(spec: ArgumentSpec, argument: unknown): Outcome<boolean[]> {
  const list: boolean[] = [];
  for (const cell of gridOf(argument).flat()) {
    const word = isBlank(cell) ? "" : String(cell).trim().toLowerCase();
    if (typeof cell === "number") list.push(cell !== 0);
    else if (YES.has(word)) list.push(true);
    else if (NO.has(word)) list.push(false);
    else {
      return invalid(
        `${spec.name}: item ${list.length + 1} is ${quoted(cell)}; it should be TRUE to keep or FALSE to leave out.`,
      );
    }
  }
  return list;
}

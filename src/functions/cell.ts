import type { Problem } from "../outcome/problem.ts";

/** What a function answers for one cell. */
export type Cell = string | number | boolean | Problem;

/** What a host hands over for one cell; null and "" are blank. */
export type RawCell = unknown;

/** A range as hosts hand it over: rows of cells. */
export type Grid = readonly (readonly RawCell[])[];

/** A range stays a range, a single cell becomes a range of one. */
export function gridOf(argument: unknown): Grid {
  if (!Array.isArray(argument)) return [[argument]];
  if (argument.length > 0 && !Array.isArray(argument[0])) return [argument];
  return argument as Grid;
}

/** Blank cells reach a function as null, "" or nothing at all, by platform. */
export function isBlank(cell: RawCell): boolean {
  return cell === null || cell === undefined || cell === "";
}

/** A cell as a message quotes it: text in quotes, long text cut. */
export function quoted(cell: RawCell): string {
  if (isBlank(cell)) return "a blank";
  if (typeof cell !== "string") return String(cell).toUpperCase();
  return `"${cell.length > 24 ? `${cell.slice(0, 23)}…` : cell}"`;
}

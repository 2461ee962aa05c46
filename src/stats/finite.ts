import { type Outcome, unavailable } from "../outcome/problem.ts";

/**
 * Hands a result on only when every number in it is finite. Values so large that a sum of squares leaves the range
 * of double precision end here in a sentence instead of as Infinity or NaN in somebody's workbook.
 */
export function finite<T>(result: T): Outcome<T> {
  if (everyNumberFinite(result)) return result;
  return unavailable(
    "The values are too large, or too far apart in size, to compute with in double precision.",
  );
}

function everyNumberFinite(part: unknown): boolean {
  if (typeof part === "number") return Number.isFinite(part);
  if (typeof part !== "object" || part === null) return true;
  return Object.values(part).every(everyNumberFinite);
}

import { invalid, type Outcome } from "../outcome/problem.ts";

/**
 * The figures that count. Without `keep` an exact 0 is taken for a blank, because blank cells reach functions as 0
 * on one platform and must never become a 0-yard shot; with `keep`, a 0 that is ticked counts. NaN marks a blank.
 */
export function keptValues(values: readonly number[], keep: readonly boolean[] | null): Outcome<number[]> {
  if (keep === null) return values.map((value) => (value === 0 ? Number.NaN : value));
  if (keep.length !== values.length) {
    return invalid(
      `keep has ${keep.length} cells and values has ${values.length}; they should be of equal length.`,
    );
  }
  return values.map((value, i) => (keep[i] ? value : Number.NaN));
}

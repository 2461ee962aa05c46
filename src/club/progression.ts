import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { checkNumbers } from "./check-number.ts";
import { finite } from "./finite.ts";
import { withoutDust } from "./without-dust.ts";

/**
 * A value for each club of a list that runs from the longest to the shortest: `value` at the reference club, `step`
 * more for each club shorter and `step` less for each club longer. Labels match whatever their case and the blanks
 * around them; a label that stands twice, or a reference that is not in the list, is refused.
 *
 * @example progression(["4", "5", "6", "7"], "6", 100, 3) // [94, 97, 100, 103]
 */
export function progression(
  clubs: readonly (string | number)[],
  reference: string | number,
  value: number,
  step: number,
): Outcome<number[]> {
  const labels = clubs.map((club) => String(club).trim());
  const keys = labels.map((label) => label.toLowerCase());
  const all = labels.join(", ");
  if (labels.length === 0) return invalid("clubs is empty; it should list the clubs, the longest first.");
  const twice = labels.find((_, index) => keys.indexOf(keys[index]!) !== index);
  if (twice !== undefined)
    return invalid(`clubs has "${twice}" twice; each should stand once. Found: ${all}.`);
  const at = keys.indexOf(String(reference).trim().toLowerCase());
  if (at < 0) return invalid(`reference "${reference}" is not among the clubs; it should be one of: ${all}.`);
  const problem = checkNumbers([
    [value, { name: "value", unit: "a number" }],
    [step, { name: "step", unit: "a number" }],
  ]);
  if (problem) return problem;
  const values = labels.map((_, index) => withoutDust(value + (index - at) * step));
  const beyond = values.map(finite).find(isProblem);
  return beyond ?? values;
}

import { isProblem, type Outcome } from "../outcome/problem.ts";
import { type ShaftChoice, type SortOptions, sortShafts } from "./sort-shafts.ts";

/**
 * One bin of shafts for several sets at once: the total over all of them is least, which set after set would not
 * give. `sets`: target weights, a list a set; the answer has the same shape.
 */
export function sortShaftSets(
  weights: readonly number[],
  sets: readonly (readonly number[])[],
  options: SortOptions = {},
): Outcome<ShaftChoice[][]> {
  const sorting = sortShafts(weights, sets.flat(), options);
  if (isProblem(sorting)) return sorting;
  const left = [...sorting.choices];
  return sets.map((set) => left.splice(0, set.length));
}

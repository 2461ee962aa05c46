import { invalid, type Problem } from "../outcome/problem.ts";
import { computable } from "./check-number.ts";

/** Refuses an empty list, and a list with something in it that is no figure above 0; says which. */
export function checkList(name: string, figures: readonly number[], unit: string): Problem | undefined {
  if (figures.length === 0) return invalid(`${name} is empty; it should list ${unit}.`);
  const wrong = figures.findIndex((figure) => !(figure >= computable.least && figure <= computable.greatest));
  if (wrong < 0) return undefined;
  const found = Number.isFinite(figures[wrong]) ? `${figures[wrong]}` : "no number";
  return invalid(`${name} has ${found} in place ${wrong + 1}; it should be ${unit}, more than 0.`);
}

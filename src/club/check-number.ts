import { invalid, type Problem } from "../outcome/problem.ts";
import { inInches } from "./in-inches.ts";

/** Least and greatest figure that no sum here runs over or vanishes with; every bench is far within. */
export const computable = { least: 1e-9, greatest: 1e9 } as const;

/** What a figure must be, for the sentence that refuses it. */
export interface NumberRule {
  /** The name of the argument, as the user knows it. */
  readonly name: string;
  /** The unit for the sentence: "grams", "inches". */
  readonly unit: string;
  /** Least value allowed; none if left out. */
  readonly least?: number;
  /** TRUE when the least value itself is refused ("more than 0", by a billionth at least). */
  readonly above?: boolean;
  /** Greatest value allowed; a thousand million if left out. */
  readonly greatest?: number;
}

/**
 * Refuses a figure that is no finite number or out of its range, with a sentence that names the argument, says what
 * was found and what would do; `undefined` when all is well.
 *
 * Example: a weight of -3 gives "weight is -3; it should be grams, more than 0".
 */
export function checkNumber(value: number, rule: NumberRule): Problem | undefined {
  const { name, unit, least, above = false, greatest = computable.greatest } = rule;
  const tooLow = least !== undefined && (above ? value < least + computable.least : value < least);
  const beyond = Math.abs(value) > computable.greatest;
  const tooHigh = value > greatest || beyond;
  if (Number.isFinite(value) && !tooLow && !tooHigh) return undefined;
  const text = unit.startsWith("inches") ? inInches : String;
  const bounds = [
    least === undefined ? undefined : above ? `more than ${text(least)}` : `${text(least)} or more`,
    rule.greatest === undefined && !beyond ? undefined : `at most ${text(greatest)}`,
  ].filter((part) => part !== undefined);
  const found = Number.isFinite(value) ? `is ${text(value)}` : "is not a number";
  return invalid(`${name} ${found}; it should be ${[unit, ...bounds].join(", ")}.`);
}

/** The first problem among several figures and their rules, or `undefined`. */
export function checkNumbers(checks: readonly (readonly [number, NumberRule])[]): Problem | undefined {
  for (const [value, rule] of checks) {
    const problem = checkNumber(value, rule);
    if (problem) return problem;
  }
  return undefined;
}

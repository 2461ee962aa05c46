import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { factor } from "./factor.ts";

/**
 * A figure in another unit, to double precision. Units go by any of their spellings.
 *
 * @example convert(150, "m", "yd") // 164.04199475065616
 */
export function convert(value: number, from: string, to: string): Outcome<number> {
  if (!Number.isFinite(value)) return invalid(`value is ${value}; a number would do.`);
  const found = factor(from, to);
  if (isProblem(found)) return found;
  const converted = (value * found.times) / found.over;
  return Number.isFinite(converted) ? converted : invalid(`value is ${value}, too large to turn into ${to}.`);
}

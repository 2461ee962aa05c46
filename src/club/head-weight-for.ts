import { isProblem, type Outcome } from "../outcome/problem.ts";
import { simpleParts } from "./simple-parts.ts";
import { weightFor } from "./weight-for.ts";

/**
 * Head weight in grams that gives a club its swingweight code, the other parts as in `assemble`.
 *
 * @example headWeightFor("D2", 38, 110, 19, 50) // 251.5
 */
export function headWeightFor(
  code: string,
  length: number,
  shaft: number,
  shaftBalance: number,
  grip: number,
  tip = 0,
  butt = 0,
): Outcome<number> {
  const parts = simpleParts(length, 0, shaft, shaftBalance, grip, tip, butt);
  if (isProblem(parts)) return parts;
  return weightFor(parts, { kind: "head" }, { kind: "swingweight", code });
}

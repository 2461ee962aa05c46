import { isProblem, type Outcome } from "../outcome/problem.ts";
import { type AssembledClub, assembleClub } from "./assemble-club.ts";
import { simpleParts } from "./simple-parts.ts";

/**
 * A club from the few figures a cell holds: club length, head weight, weight and balance point (from its butt) of
 * the cut shaft, grip weight, tip and butt weight. See `simpleParts` for where each sits.
 *
 * @example assemble(44.0945, 200, 65, 22.04725, 50) // 315 g, balance 33.39 in, D1.1, 2793 kg cm2
 */
export function assemble(
  length: number,
  head: number,
  shaft: number,
  shaftBalance: number,
  grip: number,
  tip = 0,
  butt = 0,
): Outcome<AssembledClub> {
  const parts = simpleParts(length, head, shaft, shaftBalance, grip, tip, butt);
  return isProblem(parts) ? parts : assembleClub(parts);
}

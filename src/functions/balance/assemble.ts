import { assemble as assembleOf } from "../../club/assemble.ts";
import { isProblem } from "../../outcome/problem.ts";
import { answerCells } from "../answer-cells.ts";
import type { Cell } from "../cell.ts";
import { grams, inches, optionalGrams } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const ASSEMBLE: FunctionSpec = {
  id: "ASSEMBLE",
  arguments: [
    inches("length", "the club's length"),
    grams("head", "the head's weight"),
    grams("shaft", "the cut shaft's weight"),
    inches("shaftBalance", "the cut shaft's balance point from its butt"),
    grams("grip", "the grip's weight"),
    optionalGrams("tip", "weight in the tip"),
    optionalGrams("butt", "weight at the butt"),
  ],
  shape: "row",
  headings: ["Weight (g)", "Balance (in)", "Swingweight", "Inertia (kg cm2)"],
  example: {
    call: [44.0945, 200, 65, 22.04725, 50],
    answer: [[315, 33.39, "D1.1", 2792.7]],
    source:
      "rods and a point mass with the parallel-axis theorem, lengths 1.12 m and 0.27 m: balance point 0.848095 m, 0.279274 kg m2",
  },
  answer: (...parts: Parameters<typeof assembleOf>) => {
    const club = assembleOf(...parts);
    if (isProblem(club)) return club;
    // A club beyond the scale still has its other figures: the problem stays in the swingweight's cell.
    return [club.weight, club.balance, club.swingweight, club.inertiaButt] satisfies Cell[];
  },
};

/**
 * Weight, balance point, swingweight and moment of inertia of a club from its parts, in one row.
 * @customfunction ASSEMBLE
 * @helpurl https://localhost:3000/functions.html#ASSEMBLE
 * @param {any[][]} length Length of the club in inches. A 0 counts as blank.
 * @param {any[][]} head Weight of the head in grams. A 0 counts as blank.
 * @param {any[][]} shaft Weight of the cut shaft in grams. A 0 counts as blank.
 * @param {any[][]} shaftBalance Balance point of the cut shaft in inches from its butt. A 0 counts as blank.
 * @param {any[][]} grip Weight of the grip in grams. A 0 counts as blank.
 * @param {any[][]} [tip] Grams in the tip; none where left out.
 * @param {any[][]} [butt] Grams at the butt; none where left out.
 * @param {any[][]} [headings] TRUE for a row of headings above.
 * @returns {any[][]} Grams, inches from the butt, swingweight, kg cm2 about the butt.
 */
export function assemble(
  length: any[][],
  head: any[][],
  shaft: any[][],
  shaftBalance: any[][],
  grip: any[][],
  tip?: any[][],
  butt?: any[][],
  headings?: any[][],
): any[][] {
  return answerCells(ASSEMBLE, [length, head, shaft, shaftBalance, grip, tip, butt, headings]);
}

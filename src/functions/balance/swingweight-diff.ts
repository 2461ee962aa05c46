import { swingweightDifference } from "../../club/swingweight-difference.ts";
import { answerCells } from "../answer-cells.ts";
import { code } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const SWINGWEIGHT_DIFF: FunctionSpec = {
  id: "SWINGWEIGHT.DIFF",
  arguments: [code("from"), code("to")],
  shape: "one",
  example: { call: ["C9", "D2"], answer: 3, source: "ten points a letter (common practice)" },
  answer: swingweightDifference,
};

/**
 * Swingweight points from one code to another.
 * @customfunction SWINGWEIGHT.DIFF
 * @helpurl https://localhost:3000/functions.html#SWINGWEIGHT.DIFF
 * @param {any[][]} from Swingweight to start from, such as D2. A 0 counts as blank.
 * @param {any[][]} to Swingweight to go to. A 0 counts as blank.
 * @returns {any[][]} Points; negative where the second is lighter.
 */
export function swingweightDiff(from: any[][], to: any[][]): any[][] {
  return answerCells(SWINGWEIGHT_DIFF, [from, to]);
}

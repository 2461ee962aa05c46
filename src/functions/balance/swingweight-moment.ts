import { swingweightMoment as momentOf } from "../../club/swingweight-moment.ts";
import { answerCells } from "../answer-cells.ts";
import { code } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const SWINGWEIGHT_MOMENT: FunctionSpec = {
  id: "SWINGWEIGHT.MOMENT",
  arguments: [code("code")],
  shape: "one",
  example: { call: ["D0"], answer: 213.5, source: "14-inch swingweight scale (common practice)" },
  answer: momentOf,
};

/**
 * Moment of a swingweight on the 14-inch scale, in inch-ounces.
 * @customfunction SWINGWEIGHT.MOMENT
 * @helpurl https://localhost:3000/functions.html#SWINGWEIGHT.MOMENT
 * @param {any[][]} code Swingweight such as D2 or D2.3. A 0 counts as blank.
 * @returns {any[][]} Inch-ounces.
 */
export function swingweightMoment(code: any[][]): any[][] {
  return answerCells(SWINGWEIGHT_MOMENT, [code]);
}

import { swingweightCode as codeOf } from "../../club/swingweight-code.ts";
import { answerCells } from "../answer-cells.ts";
import type { FunctionSpec } from "../define-function.ts";

export const SWINGWEIGHT_CODE: FunctionSpec = {
  id: "SWINGWEIGHT.CODE",
  arguments: [{ name: "moment", kind: "number", expects: "inch-ounces, such as 213.5", zeroIsBlank: true }],
  shape: "one",
  example: { call: [217], answer: "D2.0", source: "14-inch swingweight scale (common practice)" },
  answer: codeOf,
};

/**
 * Swingweight of a moment on the 14-inch scale.
 * @customfunction SWINGWEIGHT.CODE
 * @helpurl https://localhost:3000/functions.html#SWINGWEIGHT.CODE
 * @param {any[][]} moment Inch-ounces about a fulcrum 14 inches from the butt. A 0 counts as blank.
 * @returns {any[][]} The swingweight with one decimal.
 */
export function swingweightCode(moment: any[][]): any[][] {
  return answerCells(SWINGWEIGHT_CODE, [moment]);
}

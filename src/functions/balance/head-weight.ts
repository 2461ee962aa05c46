import { headWeightFor } from "../../club/head-weight-for.ts";
import { answerCells } from "../answer-cells.ts";
import { code, grams, inches, optionalGrams } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const HEADWEIGHT: FunctionSpec = {
  id: "HEADWEIGHT",
  arguments: [
    code("code"),
    inches("length", "the club's length"),
    grams("shaft", "the cut shaft's weight"),
    inches("shaftBalance", "the cut shaft's balance point from its butt"),
    grams("grip", "the grip's weight"),
    optionalGrams("tip", "weight in the tip"),
    optionalGrams("butt", "weight at the butt"),
  ],
  shape: "one",
  example: {
    call: ["D2", 38, 110, 19, 50],
    answer: 251.504,
    source:
      "moments about 14 in: D2 is 217 in-oz, 6151.847 g in; less 110 · 5 for the shaft, plus 50 · 8.68504 for the grip, over 24 in",
  },
  answer: headWeightFor,
};

/**
 * Head weight that gives a club its swingweight with the parts it has.
 * @customfunction HEADWEIGHT
 * @helpurl https://localhost:3000/functions.html#HEADWEIGHT
 * @param {any[][]} code Swingweight to reach, such as D2. A 0 counts as blank.
 * @param {any[][]} length Length of the club in inches. A 0 counts as blank.
 * @param {any[][]} shaft Weight of the cut shaft in grams. A 0 counts as blank.
 * @param {any[][]} shaftBalance Balance point of the cut shaft in inches from its butt. A 0 counts as blank.
 * @param {any[][]} grip Weight of the grip in grams. A 0 counts as blank.
 * @param {any[][]} [tip] Grams in the tip; none where left out.
 * @param {any[][]} [butt] Grams at the butt; none where left out.
 * @returns {any[][]} Grams of head.
 */
export function headWeight(
  code: any[][],
  length: any[][],
  shaft: any[][],
  shaftBalance: any[][],
  grip: any[][],
  tip?: any[][],
  butt?: any[][],
): any[][] {
  return answerCells(HEADWEIGHT, [code, length, shaft, shaftBalance, grip, tip, butt]);
}

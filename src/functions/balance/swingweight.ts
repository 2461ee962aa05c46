import { swingweight as swingweightOf } from "../../club/swingweight.ts";
import { answerCells } from "../answer-cells.ts";
import { grams, inches } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const SWINGWEIGHT: FunctionSpec = {
  id: "SWINGWEIGHT",
  arguments: [
    grams("weight", "the club's total weight"),
    inches("balance", "the balance point from the butt"),
    { ...inches("fulcrum", "the fulcrum from the butt"), otherwise: 14 },
  ],
  shape: "one",
  example: {
    call: [430, 29.1],
    answer: "D8.9",
    source:
      "430 g at 15.1 in from the fulcrum is 229.03 inch-ounces; D0 is 213.5, a point 1.75 (common practice)",
  },
  answer: swingweightOf,
};

/**
 * Swingweight of a club from its total weight and balance point, such as D2.3.
 * @customfunction SWINGWEIGHT
 * @helpurl https://localhost:3000/functions.html#SWINGWEIGHT
 * @param {any[][]} weight Total weight of the club in grams. A 0 counts as blank.
 * @param {any[][]} balance Balance point in inches from the butt. A 0 counts as blank.
 * @param {any[][]} [fulcrum] Inches from the butt to the fulcrum; 14 where left out or 0.
 * @returns {any[][]} The swingweight with one decimal, from A0.0 to G9.9.
 */
export function swingweight(weight: any[][], balance: any[][], fulcrum?: any[][]): any[][] {
  return answerCells(SWINGWEIGHT, [weight, balance, fulcrum]);
}

import { weightToAdd as weightToAddOf } from "../../club/weight-to-add.ts";
import { answerCells } from "../answer-cells.ts";
import { code, inches } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const WEIGHTTOADD: FunctionSpec = {
  id: "WEIGHTTOADD",
  arguments: [code("from"), code("to"), inches("position", "the place of the weight from the butt")],
  shape: "one",
  example: {
    call: ["D0", "D2", 44],
    answer: 3.30744,
    source: "two points are 3.5 inch-ounces (common practice); over 30 in, at 28.349523125 g an ounce",
  },
  answer: weightToAddOf,
};

/**
 * Grams to put at a place on the club to go from one swingweight to another.
 * @customfunction WEIGHTTOADD
 * @helpurl https://localhost:3000/functions.html#WEIGHTTOADD
 * @param {any[][]} from Swingweight the club has, such as D0. A 0 counts as blank.
 * @param {any[][]} to Swingweight it should have. A 0 counts as blank.
 * @param {any[][]} position Inches from the butt to the place of the weight. A 0 counts as blank.
 * @returns {any[][]} Grams to add; negative: to take off.
 */
export function weightToAdd(from: any[][], to: any[][], position: any[][]): any[][] {
  return answerCells(WEIGHTTOADD, [from, to, position]);
}

import { weightEffect as effectOf } from "../../fitting/weight-effect.ts";
import { invalid, isProblem } from "../../outcome/problem.ts";
import { answerCells } from "../answer-cells.ts";
import { figures, signedFigures } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const WEIGHTEFFECT: FunctionSpec = {
  id: "WEIGHTEFFECT",
  arguments: [
    signedFigures("values", "a figure for each shot"),
    figures("weights", "the shaft weight of each shot in grams"),
  ],
  shape: "row",
  headings: ["Change per 10 g", "Low 95 %", "High 95 %", "p"],
  example: {
    call: [
      [[160], [161], [158], [159], [155], [156]],
      [[95], [95], [105], [105], [115], [115]],
    ],
    answer: [[-2.5, -3.44, -1.56, 0.002]],
    source:
      "least squares by hand: slope -0.25 a gram, residual sum 1.8333 with 4 degrees of freedom, t 2.776 (standard table)",
  },
  answer: (values: number[], weights: number[]) => {
    if (values.length !== weights.length) {
      return invalid(
        `values has ${values.length} cells and weights has ${weights.length}; they should be of equal length.`,
      );
    }
    const signed = values.some((value) => value < 0);
    const counted = values.map((value) => (value === 0 && !signed ? Number.NaN : value));
    const effect = effectOf(counted, weights);
    return isProblem(effect) ? effect : [effect.per10g, effect.low, effect.high, effect.p];
  },
};

/**
 * What 10 g more shaft go with in a figure of the shots. Builds differ in more than weight.
 * @customfunction WEIGHTEFFECT
 * @helpurl https://localhost:3000/functions.html#WEIGHTEFFECT
 * @param {any[][]} values A figure for each shot. Blanks are left out, and so is 0 unless some figure is negative.
 * @param {any[][]} weights Shaft weight of each shot in grams. A 0 counts as blank.
 * @param {any[][]} [headings] TRUE for a row of headings above.
 * @returns {any[][]} Change per 10 g, low and high 95 % limit, p.
 */
export function weightEffect(values: any[][], weights: any[][], headings?: any[][]): any[][] {
  return answerCells(WEIGHTEFFECT, [values, weights, headings]);
}

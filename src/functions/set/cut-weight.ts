import { cutWeight as cutWeightOf } from "../../club/cut-weight.ts";
import { answerCells } from "../answer-cells.ts";
import { grams, inches } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const CUTWEIGHT: FunctionSpec = {
  id: "CUTWEIGHT",
  arguments: [
    grams("rawWeight", "the raw shaft's weight"),
    inches("rawLength", "the raw shaft's length"),
    inches("cutLength", "the length that is left"),
  ],
  shape: "one",
  example: { call: [120, 40, 36], answer: 108, source: "a uniform rod: 120 g · 36 / 40" },
  answer: cutWeightOf,
};

/**
 * Weight of a shaft cut to length, taken as even along its length.
 * @customfunction CUTWEIGHT
 * @helpurl https://localhost:3000/functions.html#CUTWEIGHT
 * @param {any[][]} rawWeight Weight of the raw shaft in grams. A 0 counts as blank.
 * @param {any[][]} rawLength Length of the raw shaft in inches. A 0 counts as blank.
 * @param {any[][]} cutLength Length in inches that is left. A 0 counts as blank.
 * @returns {any[][]} Grams.
 */
export function cutWeight(rawWeight: any[][], rawLength: any[][], cutLength: any[][]): any[][] {
  return answerCells(CUTWEIGHT, [rawWeight, rawLength, cutLength]);
}

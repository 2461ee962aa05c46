import { comparisonTable } from "../../fitting/comparison-table-of-lists.ts";
import { answerCells } from "../answer-cells.ts";
import { signedFigures } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const COMPARE: FunctionSpec = {
  id: "COMPARE",
  arguments: [
    { name: "builds", kind: "texts", expects: "the build of each shot" },
    signedFigures("values", "a figure for each shot"),
    { name: "baseline", kind: "text", expects: "the name of a build", otherwise: "", zeroIsBlank: true },
    {
      name: "goal",
      kind: "numberOrText",
      expects: '"high", "low" or a number to be near',
      choices: ["high", "low"],
      otherwise: "high",
    },
  ],
  shape: "table",
  example: {
    call: [
      [["A"], ["A"], ["A"], ["B"], ["B"], ["B"]],
      [[150], [152], [154], [156], [158], [160]],
    ],
    answer: [
      ["Build", "n", "Mean", "SD", "Difference", "Low 95 %", "High 95 %", "p", "Chance of being best"],
      ["A", 3, 152, 2, "", "", "", "", 0.06],
      ["B", 3, 158, 2, 6, 1.466, 10.534, 0.0213, 0.94],
    ],
    source:
      "two builds: Student's t with 4 degrees of freedom is 2.776 (standard table); 6 ± 2.776 · 2 · √(2/3); chances by ten million draws of the model",
  },
  answer: comparisonTable,
};

/**
 * Builds side by side: mean, spread, difference from a baseline with joint 95 % limits, chance of being the best.
 * @customfunction COMPARE
 * @helpurl https://localhost:3000/functions.html#COMPARE
 * @param {any[][]} builds The build of each shot. A shot without a build is left out.
 * @param {any[][]} values A figure for each shot. Blanks are left out, and so is 0 unless some figure is negative.
 * @param {any[][]} [baseline] Build to compare with; the first one where left out or 0.
 * @param {any[][]} [goal] "high" or "low", or a number to be near; "high" where left out.
 * @returns {any[][]} A row a build: n, mean, SD, difference, low, high (for all builds together), p, chance.
 */
export function compare(builds: any[][], values: any[][], baseline?: any[][], goal?: any[][]): any[][] {
  return answerCells(COMPARE, [builds, values, baseline, goal]);
}

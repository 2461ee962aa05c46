import { sortShafts as sortShaftsOf } from "../../club/sort-shafts.ts";
import { isProblem } from "../../outcome/problem.ts";
import { answerCells } from "../answer-cells.ts";
import type { Cell } from "../cell.ts";
import { figures } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const SORTSHAFTS: FunctionSpec = {
  id: "SORTSHAFTS",
  arguments: [
    { ...figures("weights", "the list of measured shaft weights in grams, above 0"), above: 0 },
    { ...figures("targets", "the list of target weights in grams, above 0"), above: 0 },
  ],
  shape: "table",
  example: {
    call: [
      [[105], [98], [110]],
      [[100], [104]],
    ],
    answer: [
      [2, 98, -2],
      [1, 105, 1],
    ],
    source: "of the six ways to give three shafts to two targets this has the least total of squares: 4 + 1",
  },
  answer: (weights: number[], targets: number[]) => {
    const numbers = weights.flatMap((weight, index) => (Number.isNaN(weight) ? [] : [index + 1]));
    const sorting = sortShaftsOf(
      weights.filter((weight) => !Number.isNaN(weight)),
      targets.filter((target) => !Number.isNaN(target)),
    );
    if (isProblem(sorting)) return sorting;
    let next = 0;
    return targets.map((target): Cell[] => {
      if (Number.isNaN(target)) return ["", "", ""];
      const { shaft, weight, difference } = sorting.choices[next++]!;
      // Counted in the list as it stands on the sheet, blanks and all.
      return [numbers[shaft - 1]!, weight, difference];
    });
  },
};

/**
 * Gives measured shafts to target weights so that the total squared difference is least.
 * @customfunction SORTSHAFTS
 * @helpurl https://localhost:3000/functions.html#SORTSHAFTS
 * @param {any[][]} weights Measured weights of the shafts in grams. Blanks and 0 are left out but counted.
 * @param {any[][]} targets Target weights in grams. A blank and 0 answer an empty row.
 * @returns {any[][]} For each target: number of the shaft in the list, its weight, its difference.
 */
export function sortShafts(weights: any[][], targets: any[][]): any[][] {
  return answerCells(SORTSHAFTS, [weights, targets]);
}

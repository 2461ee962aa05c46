import { isProblem } from "../../outcome/problem.ts";
import { modifiedZScores } from "../../stats/modified-z-score.ts";
import { answerCells } from "../answer-cells.ts";
import type { Cell } from "../cell.ts";
import { figures } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const SCREEN: FunctionSpec = {
  id: "SCREEN",
  arguments: [
    figures("values", "a list of numbers"),
    {
      name: "cutoff",
      kind: "number",
      expects: "a score above 0",
      above: 0,
      otherwise: 3.5,
      zeroIsBlank: true,
    },
  ],
  shape: "like",
  example: {
    call: [[[151], [153], [152], [154], [118]]],
    answer: [[true], [true], [true], [true], [false]],
    source: "modified z-score with cut-off 3.5: Iglewicz and Hoaglin 1993, in the NIST handbook 1.3.5.17",
  },
  answer: (values: number[], cutoff: number) => {
    const scores = modifiedZScores(values);
    if (isProblem(scores)) return scores;
    return scores.map((score): Cell => (Number.isNaN(score) ? "" : Math.abs(score) <= cutoff));
  },
};

/**
 * TRUE for a shot to keep, FALSE for one far from the rest, by the modified z-score.
 * @customfunction SCREEN
 * @helpurl https://localhost:3000/functions.html#SCREEN
 * @param {any[][]} values Figures of one build's shots. Blank and 0 answer empty.
 * @param {any[][]} [cutoff] Score beyond which a shot is far from the rest; 3.5 where left out or 0.
 * @returns {any[][]} TRUE or FALSE for each value, in the shape of the list.
 */
export function screen(values: any[][], cutoff?: any[][]): any[][] {
  return answerCells(SCREEN, [values, cutoff]);
}

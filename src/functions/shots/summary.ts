import { isProblem } from "../../outcome/problem.ts";
import { summary as summaryOf } from "../../stats/summary.ts";
import { answerCells } from "../answer-cells.ts";
import { KEEP, signedFigures } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";
import { keptValues } from "../kept-values.ts";

export const SUMMARY: FunctionSpec = {
  id: "SUMMARY",
  arguments: [signedFigures("values", "a list of numbers"), KEEP],
  shape: "row",
  headings: ["n", "Mean", "SD", "Low 95 %", "High 95 %", "Median", "Least", "Greatest"],
  example: {
    call: [[[150], [154], [158]]],
    answer: [[3, 154, 4, 144.06, 163.94, 154, 150, 158]],
    source: "Student's t with 2 degrees of freedom is 4.3027 (standard table); 154 ± 4.3027 · 4 / √3",
  },
  answer: (values: number[], keep: boolean[] | null) => {
    const kept = keptValues(values, keep);
    if (isProblem(kept)) return kept;
    const figures = summaryOf(kept);
    if (isProblem(figures)) return figures;
    const { n, mean, sd, low, high, median, least, greatest } = figures;
    return [n, mean, sd ?? "", low ?? "", high ?? "", median, least, greatest];
  },
};

/**
 * Count, mean, spread and 95 % limits of the mean of a group of shots, in one row.
 * @customfunction SUMMARY
 * @helpurl https://localhost:3000/functions.html#SUMMARY
 * @param {any[][]} values Figures of the shots. Blanks are left out, and so is an exact 0 unless keep is given.
 * @param {any[][]} [keep] TRUE for each shot that counts, in the same order.
 * @param {any[][]} [headings] TRUE for a row of headings above.
 * @returns {any[][]} n, mean, SD, low and high 95 % limit of the mean, median, least, greatest.
 */
export function summary(values: any[][], keep?: any[][], headings?: any[][]): any[][] {
  return answerCells(SUMMARY, [values, keep, headings]);
}

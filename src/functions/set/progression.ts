import { progression as progressionOf } from "../../club/progression.ts";
import { isProblem } from "../../outcome/problem.ts";
import { answerCells } from "../answer-cells.ts";
import type { Cell } from "../cell.ts";
import { figure } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const PROGRESSION: FunctionSpec = {
  id: "PROGRESSION",
  arguments: [
    { name: "clubs", kind: "texts", expects: "the list of clubs, the longest first" },
    { name: "reference", kind: "text", expects: "one of the clubs in the list", zeroIsBlank: true },
    figure("value", "a number, such as a shaft weight in grams"),
    figure("step", "a number, such as 3 for 3 g more each club"),
  ],
  shape: "like",
  example: {
    call: [[["5i"], ["6i"], ["7i"], ["8i"]], "7i", 105, 3],
    answer: [[99], [102], [105], [108]],
    source: "arithmetic: 3 g more for each club shorter",
  },
  answer: (clubs: string[], reference: string, value: number, step: number) => {
    const named = clubs.filter((club) => club !== "");
    const steps = progressionOf(named, reference, value, step);
    if (isProblem(steps)) return steps;
    let next = 0;
    return clubs.map((club): Cell => (club === "" ? "" : steps[next++]!));
  },
};

/**
 * A value for each club of a set that steps by the same amount, such as shaft weights 3 g apart.
 * @customfunction PROGRESSION
 * @helpurl https://localhost:3000/functions.html#PROGRESSION
 * @param {any[][]} clubs The clubs, the longest first.
 * @param {any[][]} reference The club in the list that has the value. A 0 counts as blank.
 * @param {any[][]} value The value at the reference.
 * @param {any[][]} step How much more for each club shorter; negative for less.
 * @returns {any[][]} A value for each club, in the shape of the list.
 */
export function progression(clubs: any[][], reference: any[][], value: any[][], step: any[][]): any[][] {
  return answerCells(PROGRESSION, [clubs, reference, value, step]);
}

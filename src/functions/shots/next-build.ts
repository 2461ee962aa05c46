import { nextOfLists } from "../../fitting/next-of-lists.ts";
import { answerCells } from "../answer-cells.ts";
import { signedFigures } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const NEXTBUILD: FunctionSpec = {
  id: "NEXTBUILD",
  arguments: [
    { name: "builds", kind: "texts", expects: "the build of each shot" },
    signedFigures("values", "a figure for each shot"),
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
      [["A"], ["A"], ["A"], ["B"], ["B"]],
      [[150], [152], [154], [156], [158]],
    ],
    answer: [["B"]],
    source: "each build first gets three shots (Chen and others 2000 start with as many); B has two",
  },
  answer: nextOfLists,
};

/**
 * The build whose next shot says most about which build is best.
 * @customfunction NEXTBUILD
 * @helpurl https://localhost:3000/functions.html#NEXTBUILD
 * @param {any[][]} builds The build of each shot. A shot without a build is left out.
 * @param {any[][]} values A figure for each shot. Blanks are left out, and so is 0 unless some figure is negative.
 * @param {any[][]} [goal] "high" or "low", or a number to be near; "high" where left out.
 * @returns {any[][]} Name of the build to hit next.
 */
export function nextBuild(builds: any[][], values: any[][], goal?: any[][]): any[][] {
  return answerCells(NEXTBUILD, [builds, values, goal]);
}

import { invalid, isProblem } from "../../outcome/problem.ts";
import { groupSummary } from "../../stats/group-summary.ts";
import { answerCells } from "../answer-cells.ts";
import { figures, KEEP, signedFigures } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const GROUP: FunctionSpec = {
  id: "GROUP",
  arguments: [
    figures("carry", "a list of carries"),
    signedFigures("offline", "a list of distances offline, plus to the right, as long as carry"),
    KEEP,
  ],
  shape: "row",
  headings: [
    "n",
    "Mean carry",
    "Mean offline",
    "SD carry",
    "SD offline",
    "Mean radius",
    "Radius of half",
    "95 % long half-axis",
    "95 % short half-axis",
    "95 % angle",
    "95 % area",
  ],
  example: {
    call: [
      [[246], [246], [254], [254]],
      [[-1], [5], [-1], [5]],
    ],
    answer: [[4, 250, 2, 4.619, 3.464, 5, 5, 11.306, 8.479, 0, 301.16]],
    source:
      "by hand: corners 4 and 3 from the middle, so radii of 5, SD √(64/3) and √12; half-axes are SD · √5.9915, the area is π · 5.9915 · 16; 5.9915 is the 95 % chi-square point of 2 degrees of freedom (NIST handbook 1.3.6.7.4)",
  },
  answer: (carry: number[], offline: number[], keep: boolean[] | null) => {
    for (const [name, list] of Object.entries({ offline, keep: keep ?? carry })) {
      if (list.length === carry.length) continue;
      return invalid(
        `${name} has ${list.length} cells and carry has ${carry.length}; they should be of equal length.`,
      );
    }
    // A carry of 0 is a blank cell in disguise and takes its row with it; an offline of 0 is a straight shot.
    const kept = keep === null ? carry : carry.map((value, i) => (keep[i] ? value : Number.NaN));
    const group = groupSummary(kept, offline);
    if (isProblem(group)) return group;
    const { n, carryMean, offlineMean, carrySd, offlineSd, meanRadius, halfRadius, ellipse } = group;
    const { longHalf, shortHalf, angle, area } = ellipse ?? {};
    const several = [carrySd, offlineSd, meanRadius, halfRadius, longHalf, shortHalf, angle, area];
    return [n, carryMean, offlineMean, ...several.map((figure) => figure ?? "")];
  },
};

/**
 * Where a build's shots lie on the ground and how tight the group is, in one row, in the unit of the list.
 * @customfunction GROUP
 * @helpurl https://localhost:3000/functions.html#GROUP
 * @param {any[][]} carry Carry of each shot. Blanks and 0 are left out.
 * @param {any[][]} offline Distance offline of each shot, plus to the right; 0 counts, blanks are left out.
 * @param {any[][]} [keep] TRUE for each shot that counts, in the same order.
 * @param {any[][]} [headings] TRUE for a row of headings above.
 * @returns {any[][]} n, mean carry, mean offline, SD of both, mean radius, radius holding half, ellipse of 95 %: half-axes, angle from the target line to the right, area.
 */
export function group(carry: any[][], offline: any[][], keep?: any[][], headings?: any[][]): any[][] {
  return answerCells(GROUP, [carry, offline, keep, headings]);
}

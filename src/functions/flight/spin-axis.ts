import { spinAxisOf } from "../../flight/cells/impact-cells.ts";
import { answerCells } from "../answer-cells.ts";
import type { FunctionSpec } from "../define-function.ts";
import { reading } from "./flight-arguments.ts";

export const SPINAXIS: FunctionSpec = {
  id: "SPINAXIS",
  arguments: [
    reading("dynamicLoft", "the loft the face shows the ball, in degrees"),
    reading("attack", "the attack angle in degrees, up positive"),
    reading("face", "the face angle in degrees, right positive"),
    reading("path", "the club path in degrees, right positive"),
  ],
  shape: "one",
  example: {
    call: [12, 3, 2, -2],
    answer: 23.514,
    source:
      "the axis square to both directions: sin = cos 3 cos 12 sin 4 / sin 9.8333 (the spin loft), so 23.5145 degrees",
  },
  answer: spinAxisOf,
};

/**
 * Tilt of the spin axis in degrees from a strike in the middle of the face, positive to the right.
 * @customfunction SPINAXIS
 * @helpurl https://localhost:3000/functions.html#SPINAXIS
 * @param {any[][]} dynamicLoft Loft the face shows the ball, in degrees.
 * @param {any[][]} attack Attack angle in degrees, up positive.
 * @param {any[][]} face Face angle in degrees, right positive.
 * @param {any[][]} path Club path in degrees, right positive.
 * @returns {any[][]} Tilt in degrees; positive curves the ball to the right.
 */
export function spinaxis(dynamicLoft: any[][], attack: any[][], face: any[][], path: any[][]): any[][] {
  return answerCells(SPINAXIS, [dynamicLoft, attack, face, path]);
}

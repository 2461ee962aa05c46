import { spinLoftOf } from "../../flight/cells/impact-cells.ts";
import { answerCells } from "../answer-cells.ts";
import type { FunctionSpec } from "../define-function.ts";
import { optionalAngle, reading } from "./flight-arguments.ts";

export const SPINLOFT: FunctionSpec = {
  id: "SPINLOFT",
  arguments: [
    reading("dynamicLoft", "the loft the face shows the ball, in degrees"),
    reading("attack", "the attack angle in degrees, up positive"),
    optionalAngle("face", "the face angle in degrees, right positive"),
    optionalAngle("path", "the club path in degrees, right positive"),
  ],
  shape: "one",
  example: {
    call: [30, -4, -2, 1],
    answer: 34.121,
    source: "the angle between two directions: cos = cos 30 cos 4 cos 3 - sin 30 sin 4, so 34.1211 degrees",
  },
  answer: spinLoftOf,
};

/**
 * Angle between where the face looks and where the head moves, in degrees.
 * @customfunction SPINLOFT
 * @helpurl https://localhost:3000/functions.html#SPINLOFT
 * @param {any[][]} dynamicLoft Loft the face shows the ball, in degrees.
 * @param {any[][]} attack Attack angle in degrees, up positive.
 * @param {any[][]} [face] Face angle in degrees, right positive; 0 where left out.
 * @param {any[][]} [path] Club path in degrees, right positive; 0 where left out.
 * @returns {any[][]} Spin loft in degrees.
 */
export function spinloft(dynamicLoft: any[][], attack: any[][], face?: any[][], path?: any[][]): any[][] {
  return answerCells(SPINLOFT, [dynamicLoft, attack, face, path]);
}

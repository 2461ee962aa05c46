import { inertiaFromPeriod } from "../../club/pendulum.ts";
import { answerCells } from "../answer-cells.ts";
import { figure, grams, inches } from "../common-arguments.ts";
import type { FunctionSpec } from "../define-function.ts";

export const INERTIA: FunctionSpec = {
  id: "INERTIA",
  arguments: [
    grams("weight", "the club's total weight"),
    inches("balance", "the balance point from the butt"),
    { ...figure("period", "seconds of one whole swing, above 0"), above: 0, zeroIsBlank: true },
    { ...figure("pivot", "inches from the butt to the pivot, negative beyond the butt"), otherwise: 0 },
  ],
  shape: "one",
  example: {
    call: [315, 33.389576, 2.051431098],
    answer: 2792.737,
    source:
      "compound pendulum of 315 g about its end, balance point 0.848095238 m, g 9.80665 m/s2: 0.279273667 kg m2",
  },
  answer: inertiaFromPeriod,
};

/**
 * Moment of inertia of a club about its butt, from the time it takes to swing like a pendulum.
 * @customfunction INERTIA
 * @helpurl https://localhost:3000/functions.html#INERTIA
 * @param {any[][]} weight Total weight of the club in grams. A 0 counts as blank.
 * @param {any[][]} balance Balance point in inches from the butt. A 0 counts as blank.
 * @param {any[][]} period Seconds of one whole swing, there and back, in small swings. A 0 counts as blank.
 * @param {any[][]} [pivot] Inches from the butt to the pivot; 0 where left out, negative beyond the butt.
 * @returns {any[][]} kg cm2 about the butt.
 */
export function inertia(weight: any[][], balance: any[][], period: any[][], pivot?: any[][]): any[][] {
  return answerCells(INERTIA, [weight, balance, period, pivot]);
}

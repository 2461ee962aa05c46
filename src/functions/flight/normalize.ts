import { normalizedCarry } from "../../flight/cells/flight-cells.ts";
import { answerCells } from "../answer-cells.ts";
import type { FunctionSpec } from "../define-function.ts";
import { aboveZero, density, optionalDensity, reading, UNITS } from "./flight-arguments.ts";

export const NORMALIZE: FunctionSpec = {
  id: "NORMALIZE",
  arguments: [
    aboveZero("carry", "the measured carry in yd, or m in si units"),
    aboveZero("ballSpeed", "the ball's speed in mph, or m/s in si units"),
    reading("launch", "the launch angle in degrees, up positive"),
    aboveZero("spin", "the spin in rpm"),
    density("density", "the density of the air it was hit in, kg/m3"),
    optionalDensity("reference"),
    UNITS,
  ],
  shape: "one",
  example: {
    call: [180.24, 120, 16, 5800, 1.0467],
    answer: 167.6,
    source:
      "the table of Bearman and Harvey (1976) with straight lines between its figures, flown in steps of a millisecond: 180.24 yd in that air, 167.57 yd in 1.225 kg/m3",
  },
  answer: (
    carry: number,
    ballSpeed: number,
    launch: number,
    spin: number,
    density: number,
    reference: number | null,
    units: string,
  ) => normalizedCarry(carry, ballSpeed, launch, spin, density, reference ?? undefined, units),
};

/**
 * The carry that the same strike would have in reference air.
 * @customfunction NORMALIZE
 * @helpurl https://localhost:3000/functions.html#NORMALIZE
 * @param {any[][]} carry Measured carry in yd, or m in si units. A 0 counts as blank.
 * @param {any[][]} ballSpeed mph, or m/s in si units. A 0 counts as blank.
 * @param {any[][]} launch Launch angle in degrees.
 * @param {any[][]} spin Spin in rpm. A 0 counts as blank.
 * @param {any[][]} density Density of the air it was hit in, kg/m3. A 0 counts as blank.
 * @param {any[][]} [reference] Density of the reference air, kg/m3; 1.225 where left out or 0.
 * @param {any[][]} [units] "us" or "si"; "us" where left out or 0.
 * @returns {any[][]} Carry in the unit it came in.
 */
export function normalize(
  carry: any[][],
  ballSpeed: any[][],
  launch: any[][],
  spin: any[][],
  density: any[][],
  reference?: any[][],
  units?: any[][],
): any[][] {
  return answerCells(NORMALIZE, [carry, ballSpeed, launch, spin, density, reference, units]);
}

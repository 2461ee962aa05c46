import { FLIGHT_HEADINGS, flightRow } from "../../flight/cells/flight-cells.ts";
import { answerCells } from "../answer-cells.ts";
import type { FunctionSpec } from "../define-function.ts";
import { aboveZero, optionalAngle, optionalDensity, reading, UNITS } from "./flight-arguments.ts";

export const FLIGHT: FunctionSpec = {
  id: "FLIGHT",
  arguments: [
    aboveZero("ballSpeed", "the ball's speed in mph, or m/s in si units"),
    reading("launch", "the launch angle in degrees, up positive"),
    aboveZero("spin", "the spin in rpm"),
    optionalAngle("axis", "the tilt of the spin axis in degrees, right positive"),
    optionalAngle("direction", "the launch direction in degrees, right positive"),
    optionalDensity("density"),
    UNITS,
  ],
  shape: "row",
  headings: FLIGHT_HEADINGS,
  example: {
    call: [120, 16, 5800],
    answer: [[168, 0, 89, 45.8, 6.1, 52]],
    source:
      "the table of Bearman and Harvey (1976) with straight lines between its figures, flown in steps of a millisecond: 167.6 yd, 88.7 ft, 45.80 degrees, 6.10 s, 51.8 mph",
  },
  answer: (
    ballSpeed: number,
    launch: number,
    spin: number,
    axis: number,
    direction: number,
    density: number | null,
    units: string,
  ) => flightRow(ballSpeed, launch, spin, axis, direction, density ?? undefined, units),
};

/**
 * Flight of a ball in still air on level ground, in one row.
 * @customfunction FLIGHT
 * @helpurl https://localhost:3000/functions.html#FLIGHT
 * @param {any[][]} ballSpeed mph, or m/s in si units. A 0 counts as blank.
 * @param {any[][]} launch Launch angle in degrees.
 * @param {any[][]} spin Spin in rpm. A 0 counts as blank.
 * @param {any[][]} [axis] Tilt of the spin axis in degrees, positive to the right; 0 where left out.
 * @param {any[][]} [direction] Launch direction in degrees, positive to the right; 0 where left out.
 * @param {any[][]} [density] Air density in kg/m3; 1.225 where left out or 0.
 * @param {any[][]} [units] "us" or "si"; "us" where left out or 0.
 * @param {any[][]} [headings] TRUE for a row of headings above.
 * @returns {any[][]} Carry and offline (yd or m), peak height (ft or m), landing angle, time, landing speed.
 */
export function flight(
  ballSpeed: any[][],
  launch: any[][],
  spin: any[][],
  axis?: any[][],
  direction?: any[][],
  density?: any[][],
  units?: any[][],
  headings?: any[][],
): any[][] {
  return answerCells(FLIGHT, [ballSpeed, launch, spin, axis, direction, density, units, headings]);
}

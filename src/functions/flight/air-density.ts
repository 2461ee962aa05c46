import { airDensityOf } from "../../flight/cells/air-cells.ts";
import { answerCells } from "../answer-cells.ts";
import type { FunctionSpec } from "../define-function.ts";
import { aboveZero, reading, UNITS } from "./flight-arguments.ts";

export const AIRDENSITY: FunctionSpec = {
  id: "AIRDENSITY",
  arguments: [
    reading("temperature", "the air's temperature in degrees F, or C in si units"),
    aboveZero("pressure", "the pressure at the place itself in inHg or hPa"),
    reading("humidity", "the relative humidity, 0 to 100"),
    UNITS,
  ],
  shape: "one",
  example: {
    call: [20, 1000, 50, "si"],
    answer: 1.1836,
    source:
      "CIPM-2007 (Picard, Davis, Gläser and Fujii, Metrologia 45, 2008) at 20 degrees C, 1000 hPa, 50 %: 1.18356 kg/m3",
  },
  answer: airDensityOf,
};

/**
 * Density of moist air in kg/m3 from a weather reading.
 * @customfunction AIRDENSITY
 * @helpurl https://localhost:3000/functions.html#AIRDENSITY
 * @param {any[][]} temperature Degrees F, or degrees C in si units.
 * @param {any[][]} pressure At the place itself, not reduced to sea level: inHg or hPa. A 0 counts as blank.
 * @param {any[][]} humidity Relative humidity, 0 to 100.
 * @param {any[][]} [units] "us" or "si"; "us" where left out or 0.
 * @returns {any[][]} Air density in kg/m3; 1.225 is standard at sea level.
 */
export function airdensity(
  temperature: any[][],
  pressure: any[][],
  humidity: any[][],
  units?: any[][],
): any[][] {
  return answerCells(AIRDENSITY, [temperature, pressure, humidity, units]);
}

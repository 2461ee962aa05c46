import { airDensityAt } from "../../flight/cells/air-cells.ts";
import { answerCells } from "../answer-cells.ts";
import type { FunctionSpec } from "../define-function.ts";
import { reading, UNITS } from "./flight-arguments.ts";

export const AIRAT: FunctionSpec = {
  id: "AIRAT",
  arguments: [
    reading("altitude", "the altitude in ft, or m in si units"),
    { ...reading("temperature", "the air's temperature in degrees F, or C in si units"), otherwise: null },
    { ...reading("humidity", "the relative humidity, 0 to 100"), otherwise: null },
    UNITS,
  ],
  shape: "one",
  example: {
    call: [5280],
    answer: 1.0467,
    source: "US Standard Atmosphere 1976 (the same as ISO 2533): 1.04666 kg/m3 at 5,280 ft",
  },
  answer: (altitude: number, temperature: number | null, humidity: number | null, units: string) =>
    airDensityAt(altitude, temperature ?? undefined, humidity ?? undefined, units),
};

/**
 * Density of the air in kg/m3 at an altitude in the standard atmosphere.
 * @customfunction AIRAT
 * @helpurl https://localhost:3000/functions.html#AIRAT
 * @param {any[][]} altitude Above sea level in ft, or m in si units.
 * @param {any[][]} [temperature] Degrees F, or degrees C in si units; the standard one where left out.
 * @param {any[][]} [humidity] Relative humidity, 0 to 100; dry air where left out.
 * @param {any[][]} [units] "us" or "si"; "us" where left out or 0.
 * @returns {any[][]} Air density in kg/m3.
 */
export function airat(
  altitude: any[][],
  temperature?: any[][],
  humidity?: any[][],
  units?: any[][],
): any[][] {
  return answerCells(AIRAT, [altitude, temperature, humidity, units]);
}

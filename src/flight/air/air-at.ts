import { isProblem, type Outcome } from "../../outcome/problem.ts";
import { within } from "../within.ts";
import type { Air } from "./air.ts";
import { airDensity } from "./air-density.ts";
import { standardAtmosphere } from "./standard-atmosphere.ts";
import { viscosity } from "./viscosity.ts";

/**
 * Air at an altitude in metres, -500 to 7,000. With neither temperature nor humidity given it is the standard atmosphere itself,
 * so sea level gives 1.225 kg/m3. With either, the pressure is the standard atmosphere's, the other one is the
 * standard temperature or dry air, and the density comes from `airDensity`, which sets sea level at 15 degrees
 * dry to 1.2255: the two published formulas differ by 0.0005 there.
 *
 * @param temperature degrees C
 * @param humidity 0 to 1
 */
export function airAt(altitude: number, temperature?: number, humidity?: number): Outcome<Air> {
  const problem = within("altitude", altitude, -500, 7000, "m");
  if (problem) return problem;
  const standard = standardAtmosphere(altitude);
  // Stryker disable next-line ConditionalExpression: never a problem here, for its bounds are wider
  if (isProblem(standard)) return standard;
  if (temperature === undefined && humidity === undefined) {
    return { density: standard.density, viscosity: viscosity(standard.temperature) };
  }
  const taken = temperature ?? standard.temperature;
  const density = airDensity({ temperature: taken, pressure: standard.pressure, humidity: humidity ?? 0 });
  return isProblem(density) ? density : { density, viscosity: viscosity(taken) };
}

import type { Outcome } from "../../outcome/problem.ts";
import { within } from "../within.ts";

export interface StandardAir {
  /** degrees C */
  readonly temperature: number;
  /** Pa */
  readonly pressure: number;
  /** kg/m3 */
  readonly density: number;
}

/**
 * Temperature, pressure and density of the standard atmosphere at an altitude in metres above sea level, -500 to
 * 11,000 m (the lowest layer). The altitude is geometric, as a map gives it.
 * Source: ISO 2533:1975, the same as US Standard Atmosphere 1976 in this layer.
 *
 * @example standardAtmosphere(1000) // { temperature: 8.501, pressure: 89876, density: 1.1117 }
 */
export function standardAtmosphere(altitude: number): Outcome<StandardAir> {
  const problem = within("altitude", altitude, -500, 11_000, "m");
  if (problem) return problem;
  const lapse = 0.0065;
  const gasConstant = 287.05287;
  const kelvin = 288.15 - lapse * geopotential(altitude);
  const pressure = 101_325 * (kelvin / 288.15) ** (9.80665 / (lapse * gasConstant));
  return { temperature: kelvin - 273.15, pressure, density: pressure / (gasConstant * kelvin) };
}

/** Geopotential altitude in metres: gravity weakens with height, so it lags the geometric one. ISO 2533, 2.3. */
function geopotential(altitude: number): number {
  const earthRadius = 6_356_766;
  return (earthRadius * altitude) / (earthRadius + altitude);
}

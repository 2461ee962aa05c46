import { viscosity } from "./viscosity.ts";

/** What a ball feels of the air. */
export interface Air {
  /** kg/m3 */
  readonly density: number;
  /** Dynamic viscosity in Pa s; it enters only through the Reynolds number. */
  readonly viscosity: number;
}

/** Density at sea level in the standard atmosphere (ISO 2533:1975), kg/m3: the reference when none is named. */
export const SEA_LEVEL_DENSITY = 1.225;

/** Air of a density, with the viscosity at a temperature in degrees C; 15 is that of the standard atmosphere. */
export function airOfDensity(density: number, temperature = 15): Air {
  return { density, viscosity: viscosity(temperature) };
}

import type { Outcome } from "../../outcome/problem.ts";
import { within } from "../within.ts";

export interface AirReading {
  /** degrees C */
  readonly temperature: number;
  /** Pa, at the place itself: a station reading, not one reduced to sea level. */
  readonly pressure: number;
  /** Relative humidity, 0 to 1. */
  readonly humidity: number;
}

/**
 * Density of moist air in kg/m3 by CIPM-2007, with 400 micromole carbon dioxide a mole.
 *
 * The formula is stated for 600 to 1100 hPa and 15 to 27 degrees C; it is used here from -40 to 60 degrees and
 * down to 400 hPa, where it stays within 1e-4 of the published tables that were checked.
 * Source: A. Picard, R. S. Davis, M. Gläser, K. Fujii, Metrologia 45 (2008) 149-155, equations 1 to 4, appendix A.
 *
 * @example airDensity({ temperature: 20, pressure: 101325, humidity: 0.5 }) // 1.19931
 */
export function airDensity({ temperature, pressure, humidity }: AirReading): Outcome<number> {
  const problem =
    within("temperature", temperature, -40, 60, "degrees C") ??
    within("pressure", pressure, 40_000, 110_000, "Pa") ??
    within("humidity", humidity, 0, 1);
  if (problem) return problem;
  const kelvin = temperature + 273.15;
  const vapour = vapourFraction(temperature, pressure, humidity);
  const compressibility = compressibilityOf(temperature, pressure, vapour);
  const dryMolarMass = 28.96546e-3;
  const waterMolarMass = 18.01528e-3;
  const gasConstant = 8.314472;
  return (
    ((pressure * dryMolarMass) / (compressibility * gasConstant * kelvin)) *
    (1 - (1 - waterMolarMass / dryMolarMass) * vapour)
  );
}

/** Mole fraction of water vapour, from the saturation pressure and the enhancement factor of the same paper. */
function vapourFraction(temperature: number, pressure: number, humidity: number): number {
  const kelvin = temperature + 273.15;
  const saturation = Math.exp(
    1.2378847e-5 * kelvin ** 2 - 1.9121316e-2 * kelvin + 33.93711047 - 6.3431645e3 / kelvin,
  );
  const enhancement = 1.00062 + 3.14e-8 * pressure + 5.6e-7 * temperature ** 2;
  return (humidity * enhancement * saturation) / pressure;
}

/** How far the air is from an ideal gas: about 0.9996. */
function compressibilityOf(temperature: number, pressure: number, vapour: number): number {
  const t = temperature;
  const ratio = pressure / (t + 273.15);
  const first =
    1.58123e-6 -
    2.9331e-8 * t +
    1.1043e-10 * t ** 2 +
    (5.707e-6 - 2.051e-8 * t) * vapour +
    (1.9898e-4 - 2.376e-6 * t) * vapour ** 2;
  return 1 - ratio * first + ratio ** 2 * (1.83e-11 - 0.765e-8 * vapour ** 2);
}

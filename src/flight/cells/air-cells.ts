import { isProblem, type Outcome } from "../../outcome/problem.ts";
import { airAt } from "../air/air-at.ts";
import { airDensity } from "../air/air-density.ts";
import { within } from "../within.ts";
import { PASCALS, unitSystem } from "./flight-units.ts";

/**
 * Air density in kg/m3 as a worksheet asks for it: temperature in degrees F or C by `units`, humidity 0 to 100.
 * Pressure at the place itself, in inHg or hPa whatever the units: nothing below 40 can be hPa and nothing above 400
 * inHg.
 *
 * @example airDensityOf(75, 30, 50) // 1.18531
 */
export function airDensityOf(
  temperature: number,
  pressure: number,
  humidity: number,
  units?: string,
): Outcome<number> {
  const system = unitSystem(units);
  if (isProblem(system)) return system;
  const problem = checkWeather(temperature, humidity, system.temperature) ?? checkPressure(pressure);
  if (problem) return problem;
  return airDensity({
    temperature: system.celsius(temperature),
    pressure: pressure * (pressure < 40 ? PASCALS.inHg : PASCALS.hPa),
    humidity: humidity / 100,
  });
}

/**
 * Air density in kg/m3 at an altitude (ft or m) in the standard atmosphere; a temperature or humidity (0 to 100) given
 * takes the place of the standard one.
 *
 * @example airDensityAt(5280) // 1.04667
 */
export function airDensityAt(
  altitude: number,
  temperature?: number,
  humidity?: number,
  units?: string,
): Outcome<number> {
  const system = unitSystem(units);
  if (isProblem(system)) return system;
  const [least, most] = system.height === "ft" ? [-1500, 19_500] : [-457, 5943];
  const problem =
    within("altitude", altitude, least, most, system.height) ??
    checkWeather(temperature ?? 0, humidity ?? 0, system.temperature);
  if (problem) return problem;
  const air = airAt(
    altitude * system.metresUp,
    temperature === undefined ? undefined : system.celsius(temperature),
    humidity === undefined ? undefined : humidity / 100,
  );
  return isProblem(air) ? air : air.density;
}

function checkWeather(temperature: number, humidity: number, unit: string) {
  const [least, most] = unit === "degrees F" ? [-40, 140] : [-40, 60];
  return within("temperature", temperature, least, most, unit) ?? within("humidity", humidity, 0, 100, "%");
}

function checkPressure(pressure: number) {
  if (pressure < 40) return within("pressure", pressure, 12, 32.4, "inHg");
  return within("pressure", pressure, 400, 1100, "hPa, or 12 to 32.4 inHg");
}

import { isProblem, type Outcome } from "../../outcome/problem.ts";
import { airOfDensity, SEA_LEVEL_DENSITY } from "../air/air.ts";
import { flyBall } from "../trajectory/fly-ball.ts";
import { normalizeCarry } from "../uses/normalize-carry.ts";
import { within } from "../within.ts";
import { type UnitSystem, unitSystem } from "./flight-units.ts";

/** Headings of the row that `flightRow` answers. */
export const FLIGHT_HEADINGS = [
  "Carry",
  "Offline",
  "Peak height",
  "Landing angle",
  "Time",
  "Landing speed",
] as const;

/** carry, offline, peak height, landing angle, time, landing speed. */
export type FlightRow = readonly [number, number, number, number, number, number];

/**
 * The flight of a ball as a worksheet asks for it: speed in mph or m/s, angles in degrees, spin in rpm, density in
 * kg/m3 (1.225 when left out). Answers carry and offline in yd or m, peak height in ft or m, landing angle in degrees,
 * time in s, landing speed in mph or m/s. Axis and direction are positive to the right.
 */
export function flightRow(
  ballSpeed: number,
  launch: number,
  spin: number,
  axis = 0,
  direction = 0,
  density = SEA_LEVEL_DENSITY,
  units?: string,
): Outcome<FlightRow> {
  const system = unitSystem(units);
  if (isProblem(system)) return system;
  const problem = checkSpeed(ballSpeed, system);
  if (problem) return problem;
  const strike = { speed: ballSpeed * system.metresASecond, launch, spin, axis, direction };
  const flight = flyBall(strike, airOfDensity(density));
  if (isProblem(flight)) return flight;
  return [
    flight.carry / system.metresAway,
    flight.offline / system.metresAway,
    flight.height / system.metresUp,
    flight.landingAngle,
    flight.time,
    flight.landingSpeed / system.metresASecond,
  ];
}

/**
 * The carry the same strike would have in reference air, as a worksheet asks for it: carry in yd or m, speed in mph or
 * m/s, densities in kg/m3, the reference 1.225 when left out.
 */
export function normalizedCarry(
  carry: number,
  ballSpeed: number,
  launch: number,
  spin: number,
  density: number,
  reference = SEA_LEVEL_DENSITY,
  units?: string,
): Outcome<number> {
  const system = unitSystem(units);
  if (isProblem(system)) return system;
  const problem =
    within("carry", carry, 0, 600, system.distance) ??
    checkSpeed(ballSpeed, system) ??
    within("reference density", reference, 0.3, 2, "kg/m3");
  if (problem) return problem;
  const strike = { speed: ballSpeed * system.metresASecond, launch, spin };
  return normalizeCarry(carry, strike, airOfDensity(density), airOfDensity(reference));
}

function checkSpeed(ballSpeed: number, { speed }: UnitSystem) {
  return speed === "mph"
    ? within("ball speed", ballSpeed, 3, 265, speed)
    : within("ball speed", ballSpeed, 1, 120, speed);
}

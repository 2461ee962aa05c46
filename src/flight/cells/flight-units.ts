import { invalid, type Problem } from "../../outcome/problem.ts";
import { UNIT_SIZES } from "./unit-sizes.ts";

/** "us": mph, yd, ft, degrees F, inHg. "si": m/s, m, m, degrees C, hPa. */
export type FlightUnits = "us" | "si";

/** The units a worksheet function speaks, as words for its messages and as factors to SI. */
export interface UnitSystem {
  readonly speed: string;
  readonly distance: string;
  readonly height: string;
  /** Metres a second in one unit of speed. */
  readonly metresASecond: number;
  /** Metres in one unit of distance. */
  readonly metresAway: number;
  /** Metres in one unit of height. */
  readonly metresUp: number;
  readonly celsius: (temperature: number) => number;
  readonly temperature: string;
}

const SYSTEMS: Readonly<Record<FlightUnits, UnitSystem>> = {
  us: {
    speed: "mph",
    distance: "yd",
    height: "ft",
    metresASecond: UNIT_SIZES.mph,
    metresAway: UNIT_SIZES.yd,
    metresUp: UNIT_SIZES.ft,
    celsius: (temperature) => (temperature - 32) / 1.8,
    temperature: "degrees F",
  },
  si: {
    speed: "m/s",
    distance: "m",
    height: "m",
    metresASecond: 1,
    metresAway: 1,
    metresUp: 1,
    celsius: (temperature) => temperature,
    temperature: "degrees C",
  },
};

/** Pascals in an inch of mercury and in a hectopascal. */
export const PASCALS = { inHg: UNIT_SIZES.inHg, hPa: UNIT_SIZES.hPa } as const;

/** The unit system of a code, "us" when left out; upper and lower case alike. */
export function unitSystem(units: unknown = "us"): UnitSystem | Problem {
  const code = typeof units === "string" ? units.trim().toLowerCase() : units;
  if (code === "us" || code === "si") return SYSTEMS[code];
  return invalid(`units should be "us" or "si", not "${String(units)}"`);
}

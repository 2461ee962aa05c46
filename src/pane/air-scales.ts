import type { AirFacts } from "../fitting/session-air.ts";
import { UNIT_SIZES } from "../flight/cells/unit-sizes.ts";
import type { UnitSet } from "../shots/unit-set.ts";

/** One reading of the air: what it is called, and how it goes between what is kept and what is shown. */
export interface AirScale {
  readonly key: keyof AirFacts;
  readonly label: string;
  readonly unit: string;
  /** Bounds of the kept figure. */
  readonly least: number;
  readonly most: number;
  readonly shown: (kept: number) => number;
  readonly kept: (shown: number) => number;
}

const same = (figure: number) => figure;
const INCH_OF_MERCURY = UNIT_SIZES.inHg / UNIT_SIZES.hPa;

/**
 * The readings of the air in the units of a set: degrees C, hPa and metres, or degrees F (32 more than 1.8 times
 * degrees C, by definition), inches of mercury and feet. Bounds are those of `sessionAir`.
 */
export function airScales(units: UnitSet): readonly AirScale[] {
  const us = units === "us";
  return [
    {
      ...{ key: "temperature", label: "Temperature", unit: us ? "°F" : "°C", least: -40, most: 60 },
      shown: us ? (celsius) => celsius * 1.8 + 32 : same,
      kept: us ? (fahrenheit) => (fahrenheit - 32) / 1.8 : same,
    },
    {
      ...{ key: "pressure", label: "Pressure", unit: us ? "inHg" : "hPa", least: 400, most: 1100 },
      shown: us ? (hectopascal) => hectopascal / INCH_OF_MERCURY : same,
      kept: us ? (inches) => inches * INCH_OF_MERCURY : same,
    },
    { key: "humidity", label: "Humidity", unit: "%", least: 0, most: 100, shown: same, kept: same },
    {
      ...{ key: "altitude", label: "Altitude", unit: us ? "ft" : "m", least: -500, most: 7000 },
      shown: us ? (metres) => metres / UNIT_SIZES.ft : same,
      kept: us ? (feet) => feet * UNIT_SIZES.ft : same,
    },
  ];
}

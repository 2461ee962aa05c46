import type { Air } from "../flight/air/air.ts";
import { airOfDensity } from "../flight/air/air.ts";
import { airAt } from "../flight/air/air-at.ts";
import { airDensity } from "../flight/air/air-density.ts";
import { REFERENCE_AIR } from "../flight/uses/normalize-carry.ts";
import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";

/**
 * What is known of the air a session was hit in. A pressure goes before an altitude, for it says more. Temperature in
 * degrees C, pressure at the place itself in hPa, humidity 0 to 100, altitude in metres above the sea.
 */
export interface AirFacts {
  readonly temperature?: number;
  readonly pressure?: number;
  readonly humidity?: number;
  readonly altitude?: number;
}

/** The air that the shots of a session were hit in. */
export interface SessionAir extends Air {
  /** Whether anything was stated; the reference air is taken where nothing was. */
  readonly stated: boolean;
}

/**
 * The air of a session. Nothing stated: the reference air, standard at sea level, so that carries are already "in the
 * same air". A pressure without a temperature takes 15 degrees C, without humidity dry air; an altitude alone is the
 * standard atmosphere's.
 */
export function sessionAir(facts: AirFacts | undefined): Outcome<SessionAir> {
  const { temperature, pressure, humidity, altitude } = facts ?? {};
  const given = [temperature, pressure, humidity, altitude].filter((figure) => figure !== undefined);
  if (given.length === 0) return { ...REFERENCE_AIR, stated: false };
  if (humidity !== undefined && !(humidity >= 0 && humidity <= 100)) {
    return invalid(`humidity is ${humidity}; it should be 0 to 100.`);
  }
  const share = humidity === undefined ? undefined : humidity / 100;
  if (pressure === undefined) {
    const air = airAt(altitude ?? 0, temperature, share);
    return isProblem(air) ? air : { ...air, stated: true };
  }
  if (!(pressure >= 400 && pressure <= 1100)) {
    return invalid(`pressure is ${pressure}; it should be 400 to 1100 hPa, read at the place itself.`);
  }
  const celsius = temperature ?? 15;
  const density = airDensity({ temperature: celsius, pressure: pressure * 100, humidity: share ?? 0 });
  return isProblem(density) ? density : { ...airOfDensity(density, celsius), stated: true };
}

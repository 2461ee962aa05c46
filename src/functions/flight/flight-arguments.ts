import type { ArgumentSpec } from "../argument.ts";

/** The last argument of the flight functions. */
export const UNITS: ArgumentSpec = {
  name: "units",
  kind: "text",
  expects: '"us" (mph, yd, ft, degrees F) or "si" (m/s, m, m, degrees C)',
  choices: ["us", "si"],
  otherwise: "us",
  zeroIsBlank: true,
};

/** Speed, spin, carry, pressure: never 0, so that a 0 is a blank in disguise. */
export function aboveZero(name: string, expects: string): ArgumentSpec {
  return { name, kind: "number", expects: `${expects}, above 0`, above: 0, zeroIsBlank: true };
}

/** An air density; beyond 2 kg/m3 it is a pressure that was typed in its place. */
export function density(name: string, what: string): ArgumentSpec {
  const most = 2;
  return { ...aboveZero(name, what), expects: `${what}, above 0 and at most ${most}`, most };
}

/** Air density where it may be left out; sea level in the standard atmosphere is taken then. */
export function optionalDensity(name: string): ArgumentSpec {
  return { ...density(name, "an air density in kg/m3 (1.225 where left out)"), otherwise: null };
}

/** An angle or a reading of which 0 is a figure. */
export function reading(name: string, expects: string): ArgumentSpec {
  return { name, kind: "number", expects };
}

/** An angle that counts as 0 where it is left out. */
export function optionalAngle(name: string, expects: string): ArgumentSpec {
  return { name, kind: "number", expects, otherwise: 0 };
}

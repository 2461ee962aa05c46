import type { ArgumentSpec } from "./argument.ts";

/** A weight in grams that must be there and above 0. */
export function grams(name: string, what: string): ArgumentSpec {
  return { name, kind: "number", expects: `${what} in grams, above 0`, above: 0, zeroIsBlank: true };
}

/** A place or length in inches that must be there and above 0. */
export function inches(name: string, what: string): ArgumentSpec {
  return { name, kind: "number", expects: `${what} in inches, above 0`, above: 0, zeroIsBlank: true };
}

/** A part that may be missing: nothing and 0 g are the same. */
export function optionalGrams(name: string, what: string): ArgumentSpec {
  return { name, kind: "number", expects: `${what} in grams, 0 or more`, least: 0, otherwise: 0 };
}

/** A swingweight code; it begins with a letter, so that a 0 is a blank cell in disguise. */
export function code(name: string): ArgumentSpec {
  return { name, kind: "text", expects: "a swingweight from A0 to G9.9, such as D2", zeroIsBlank: true };
}

/** Any number. */
export function figure(name: string, expects: string): ArgumentSpec {
  return { name, kind: "number", expects };
}

/** A list of figures in which an exact 0 is taken for a blank: speeds, carries, spins and weights are never 0. */
export function figures(name: string, expects: string): ArgumentSpec {
  return { name, kind: "numbers", expects, zeroIsBlank: true };
}

/** A list of figures in which 0 is a figure: offline and angles. */
export function signedFigures(name: string, expects: string): ArgumentSpec {
  return { name, kind: "numbers", expects };
}

/** Which shots count. */
export const KEEP: ArgumentSpec = {
  name: "keep",
  kind: "ticks",
  expects: "TRUE for each shot that counts",
  otherwise: null,
};

import { expect, test } from "vitest";
import { FUNCTIONS } from "../../src/functions/catalogue.ts";
import { argumentsOf } from "../../src/functions/define-function.ts";

/**
 * Every name and order of arguments that was ever given out. People's workbooks hold them: a line here is only ever
 * made longer, at its end, and none goes. The last argument of a row is always `headings`, so a row gets no more.
 */
const GIVEN_OUT: Readonly<Record<string, string>> = {
  SWINGWEIGHT: "weight, balance, fulcrum",
  "SWINGWEIGHT.MOMENT": "code",
  "SWINGWEIGHT.CODE": "moment",
  "SWINGWEIGHT.DIFF": "from, to",
  ASSEMBLE: "length, head, shaft, shaftBalance, grip, tip, butt, headings",
  HEADWEIGHT: "code, length, shaft, shaftBalance, grip, tip, butt",
  WEIGHTTOADD: "from, to, position",
  INERTIA: "weight, balance, period, pivot",
  PROGRESSION: "clubs, reference, value, step",
  CUTWEIGHT: "rawWeight, rawLength, cutLength",
  SORTSHAFTS: "weights, targets",
  SUMMARY: "values, keep, headings",
  GROUP: "carry, offline, keep, headings",
  SCREEN: "values, cutoff",
  COMPARE: "builds, values, baseline, goal",
  SHOTSNEEDED: "sd, difference, power, confidence",
  WEIGHTEFFECT: "values, weights, headings",
  NEXTBUILD: "builds, values, goal",
  AIRDENSITY: "temperature, pressure, humidity, units",
  AIRAT: "altitude, temperature, humidity, units",
  FLIGHT: "ballSpeed, launch, spin, axis, direction, density, units, headings",
  NORMALIZE: "carry, ballSpeed, launch, spin, density, reference, units",
  SPINLOFT: "dynamicLoft, attack, face, path",
  SPINAXIS: "dynamicLoft, attack, face, path",
};

const own = new Map(FUNCTIONS.map((spec) => [spec.id, argumentsOf(spec).map(({ name }) => name)]));

test.each(Object.entries(GIVEN_OUT))(
  "%s is still called so, and takes what it took in the same order",
  (id, names) => {
    const given = names.split(", ");
    expect(own.get(id)?.slice(0, given.length)).toEqual(given);
  },
);

test("every function that is given out from now on is in the list, with all its arguments", () => {
  expect(Object.fromEntries([...own].map(([id, names]) => [id, names.join(", ")]))).toEqual(GIVEN_OUT);
});

test.each(FUNCTIONS.map(({ id }) => id))("%s has three letters or more and reads like no cell", (id) => {
  expect(id).toMatch(/^[A-Z][A-Z0-9.]{2,}$/);
  // A1 and R1C1 form; a spreadsheet would take these for cells. Source: the platform's guide to names of functions.
  expect(id).not.toMatch(/^[A-Z]{1,3}\d+$|^R\d*C\d*$/);
});

import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { QUANTITY_SIZES } from "./quantity-sizes.ts";
import type { UnitName } from "./unit-names.ts";
import { unitOf } from "./unit-of.ts";

/**
 * How to get from one unit to another: `value * times / over`, of which one is always 1. The units are defined by
 * short decimals in one direction only (a yard is 0.9144 m, a metre is no short decimal of yards), so going the
 * other way divides; that keeps every conversion to a single rounding.
 */
export interface Factor {
  readonly times: number;
  readonly over: number;
}

const known = new Map<string, Outcome<Factor>>();

/**
 * The factor between two units, by any of their spellings. Definitions come from the units library.
 *
 * @example factor("m", "yards") // { times: 1, over: 0.9144 }
 */
export function factor(from: string, to: string): Outcome<Factor> {
  const pair = `${from}\n${to}`;
  let answer = known.get(pair);
  if (answer === undefined) {
    answer = findFactor(from, to);
    if (!isProblem(answer)) known.set(pair, answer);
  }
  return answer;
}

function findFactor(from: string, to: string): Outcome<Factor> {
  const source = unitOf(from);
  if (!source) return invalid(`from is "${from}", which is no unit known here; yd, m, mph or rpm would do.`);
  const target = unitOf(to);
  if (!target) return invalid(`to is "${to}", which is no unit known here; yd, m, mph or rpm would do.`);
  if (source.dimension !== target.dimension) {
    return invalid(
      `to is "${to}", a unit of ${target.dimension}; from is "${from}", a unit of ${source.dimension}.`,
    );
  }
  const forward = tidy(size(source) / size(target));
  const backward = tidy(size(target) / size(source));
  return String(forward).length <= String(backward).length
    ? { times: forward, over: 1 }
    : { times: 1, over: backward };
}

function size(unit: UnitName): number {
  return QUANTITY_SIZES[unit.quantity]! * unit.times;
}

/** Takes off what the division of two sizes left in the last digits: 25.400000000000002 is 25.4. */
function tidy(ratio: number): number {
  const rounded = Number(ratio.toPrecision(14));
  return String(rounded).length < 12 ? rounded : ratio;
}

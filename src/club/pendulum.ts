import { type Outcome, unavailable } from "../outcome/problem.ts";
import { checkNumbers, type NumberRule } from "./check-number.ts";
import { kgCm2PerGramInch2, standardGravity } from "./exact-units.ts";

const rules = {
  weight: { name: "weight", unit: "grams", least: 0, above: true },
  balance: { name: "balance", unit: "inches from the butt", least: 0, above: true },
  period: { name: "period", unit: "seconds", least: 0, above: true },
  inertia: { name: "inertia", unit: "kg cm2", least: 0, above: true },
  pivot: { name: "pivot", unit: "inches from the butt" },
} satisfies Record<string, NumberRule>;

/**
 * Weight times gravity times arm, in kg cm2 a second squared: what brings a hanging club back. Grams and inches in.
 */
function restoring(weight: number, arm: number): number {
  return (weight / 1000) * standardGravity * 100 * arm * 2.54;
}

/**
 * Most that a club's inertia about its balance point comes to, as a multiple of its weight times the balance point's
 * distance from the butt squared. A weight at the butt of so many times the head's would have it (two weights at the
 * ends of a line have the lesser over the greater); clubs have a quarter. Beyond it several swings were timed as one.
 */
const mostSpread = 3;

/** Seconds of one swing about a pivot `arm` inches from the balance point; `spread`: inches of gyration squared. */
function swingOf(arm: number, spread: number): number {
  return 2 * Math.PI * Math.sqrt(((arm + spread / arm) * 2.54) / (standardGravity * 100));
}

/**
 * Moment of inertia in kg cm2 about the butt of a club that swings freely, in small swings, about a pivot `pivot`
 * inches from the butt: period T gives T^2 weight g arm / (4 pi^2) about the pivot (the compound pendulum), and the
 * parallel-axis theorem carries it to the butt. Time many swings and divide. A pivot beyond the butt is negative.
 *
 * A period shorter than a weight at one place would have cannot be, nor one so long that it must be the time of several
 * swings, and a pivot at the balance point does not swing.
 *
 * @example inertiaFromPeriod(315, 33.39, 2.051431) // 2792.8
 */
export function inertiaFromPeriod(
  weight: number,
  balance: number,
  period: number,
  pivot = 0,
): Outcome<number> {
  const problem = checkNumbers([
    [weight, rules.weight],
    [balance, rules.balance],
    [period, rules.period],
    [pivot, rules.pivot],
  ]);
  if (problem) return problem;
  const arm = Math.abs(balance - pivot);
  if (arm === 0)
    return unavailable(`pivot is ${pivot}, the balance point itself; a club does not swing about it.`);
  const longest = swingOf(arm, mostSpread * balance ** 2);
  if (period > longest) {
    return unavailable(
      `period is ${period} s, but a club that balances ${Number(balance.toFixed(2))} inches from its butt takes ` +
        `${longest.toFixed(1)} s at most about this pivot; it should be the time of one swing, there and back.`,
    );
  }
  const aboutPivot = (period / (2 * Math.PI)) ** 2 * restoring(weight, arm);
  const aboutBalance = aboutPivot - weight * arm ** 2 * kgCm2PerGramInch2;
  if (aboutBalance < 0) {
    return unavailable(
      `period is ${period} s, but a club that balances ${Number(arm.toFixed(2))} inches from its pivot takes ` +
        `${swingOf(arm, 0).toFixed(3)} s at least; time it again.`,
    );
  }
  return aboutBalance + weight * balance ** 2 * kgCm2PerGramInch2;
}

/**
 * The period in seconds that a club should show on the pendulum, from its weight, balance point and moment of
 * inertia about the butt (kg cm2): what the bench checks a built club by.
 */
export function pendulumPeriod(weight: number, balance: number, inertia: number, pivot = 0): Outcome<number> {
  const problem = checkNumbers([
    [weight, rules.weight],
    [balance, rules.balance],
    [inertia, rules.inertia],
    [pivot, rules.pivot],
  ]);
  if (problem) return problem;
  const arm = Math.abs(balance - pivot);
  if (arm === 0)
    return unavailable(`pivot is ${pivot}, the balance point itself; a club does not swing about it.`);
  const aboutPivot = inertia + weight * (arm ** 2 - balance ** 2) * kgCm2PerGramInch2;
  if (aboutPivot <= 0)
    return unavailable("inertia is less than the club's weight at its balance point would have.");
  return 2 * Math.PI * Math.sqrt(aboutPivot / restoring(weight, arm));
}

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
 * Moment of inertia in kg cm2 about the butt of a club that swings freely, in small swings, about a pivot `pivot`
 * inches from the butt: period T gives T^2 weight g arm / (4 pi^2) about the pivot (the compound pendulum), and the
 * parallel-axis theorem carries it to the butt. Time many swings and divide. A pivot beyond the butt is negative.
 *
 * A period shorter than a weight at one place would have cannot be, and a pivot at the balance point does not swing.
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
  const aboutPivot = (period / (2 * Math.PI)) ** 2 * restoring(weight, arm);
  const aboutBalance = aboutPivot - weight * arm ** 2 * kgCm2PerGramInch2;
  if (aboutBalance < 0) {
    const least = 2 * Math.PI * Math.sqrt((arm * 2.54) / (standardGravity * 100));
    return unavailable(
      `period is ${period} s, but a club that balances ${Number(arm.toFixed(2))} inches from its pivot takes ` +
        `${least.toFixed(3)} s at least; time it again.`,
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

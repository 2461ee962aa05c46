import { logExcess } from "./log-excess.ts";
import { stirlingError } from "./stirling-error.ts";
import { type Tails, tailsFrom } from "./tails.ts";

/**
 * The incomplete gamma function, which chi-square comes down to, as the tails of a gamma distributed value `x` of
 * shape `a` and scale 1. For x, a > 0. The height is x^a e^-x / gamma(a); the tail on the value's own side is summed
 * by the series below a + 1 and by the continued fraction above (Abramowitz and Stegun 1964, 6.5.29 and 6.5.31).
 *
 * `Math.exp(gammaTails(3, 1).logUpper)` is e^-3.
 */
export function gammaTails(x: number, a: number): Tails {
  const logHeight = 0.5 * Math.log(a / (2 * Math.PI)) - stirlingError(a) - a * logExcess((x - a) / a, x / a);
  // Stryker disable next-line EqualityOperator: there both serve
  return x < a + 1
    ? tailsFrom(logHeight, series(x, a), "lower")
    : tailsFrom(logHeight, 1 / fraction(x, a), "upper");
}

/** Only so that no input makes the page wait. */
const MOST_TERMS = 20000;

function series(x: number, a: number): number {
  let term = 1 / a;
  let sum = term;
  // Stryker disable next-line EqualityOperator: a term this small changes no digit of the sum
  for (let n = 1; term > sum * 1e-17; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** By the rule of Lentz, in the form of Thompson and Barnett (1986, Journal of Computational Physics 64, 490-509). */
function fraction(x: number, a: number): number {
  let value = x + 1 - a;
  let above = value;
  let below = 0;
  // Stryker disable next-line EqualityOperator: a term more or less of twenty thousand
  for (let m = 1; m < MOST_TERMS; m++) {
    const over = m * (a - m);
    const under = x + 1 - a + 2 * m;
    below = 1 / (under + over * below);
    above = under + over / above;
    const change = above * below;
    value *= change;
    // Stryker disable next-line EqualityOperator: doubles next to 1 are 1.1e-16 or 2.2e-16 apart, so none is 3e-16 off
    if (Math.abs(change - 1) < 3e-16) break;
  }
  return value;
}

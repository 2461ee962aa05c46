import { logExcess } from "./log-excess.ts";
import { stirlingError } from "./stirling-error.ts";
import { type Tails, tailsFrom } from "./tails.ts";

/**
 * The incomplete beta function, which Student's t and Fisher's F come down to, as the tails of the odds x / (1 - x)
 * when x is beta distributed with `a` and `b`. Odds, because neither end of them rounds to 1. For a, b > 0.
 *
 * The height is x^a (1 - x)^b / B(a, b). Its logarithm is the sum of Stirling errors and of two terms that are never
 * negative (Loader 2000), so nothing cancels. The tail on the value's own side is the height over a continued
 * fraction whose denominators are positive (Didonato and Morris 1992, ACM Transactions on Mathematical Software 18,
 * 360-373, equation 9), and the other tail 1 less that: it is never the small one.
 *
 * `Math.exp(betaTails(1, 2, 3).logLower)` is 0.6875.
 */
export function betaTails(odds: number, a: number, b: number): Tails {
  // Stryker disable next-line EqualityOperator: at odds of 1 both say a half
  const x = odds < 1 ? odds / (1 + odds) : 1 / (1 + 1 / odds);
  const y = 1 / (1 + odds);
  const n = a + b;
  // How far n x lies above a, which is how far n y lies below b.
  const beyond = b * x - a * y;
  const distance = a * logExcess(beyond / a, (n * x) / a) + b * logExcess(-beyond / b, (n * y) / b);
  const logHeight =
    0.5 * Math.log((a / (2 * Math.PI)) * (b / n)) +
    stirlingError(n) -
    stirlingError(a) -
    stirlingError(b) -
    distance;
  // Stryker disable next-line EqualityOperator: where neither tail is nearer, both fractions serve
  return x * (n + 2) <= a + 1
    ? tailsFrom(logHeight, 1 / fraction(x, y, a, b), "lower")
    : tailsFrom(logHeight, 1 / fraction(y, x, b, a), "upper");
}

/** Far more than any table of shots takes (below 100); only so that no input makes the page wait. */
const MOST_TERMS = 20000;

/** By the rule of Lentz, in the form of Thompson and Barnett (1986, Journal of Computational Physics 64, 490-509). */
function fraction(x: number, y: number, a: number, b: number): number {
  const start = a * y - b * x + 1;
  let value = (a * start) / (a + 1);
  let above = value;
  let below = 0;
  // Stryker disable next-line EqualityOperator: a term more or less of twenty thousand
  for (let m = 1; m < MOST_TERMS; m++) {
    const place = a + 2 * m - 1;
    const over = ((a + m - 1) / place) * m * (((a + b + m - 1) / place) * x) * ((b - m) * x);
    const under = m + (m * (b - m) * x) / place + ((a + m) * (start + m * (1 + y))) / (place + 2);
    below = 1 / (under + over * below);
    above = under + over / above;
    const change = above * below;
    value *= change;
    // Turned round so that a figure out of range, NaN by now, ends it too.
    // Stryker disable next-line EqualityOperator: doubles next to 1 are 1.1e-16 or 2.2e-16 apart, so none is 3e-16 off
    if (!(Math.abs(change - 1) >= 3e-16)) break;
  }
  return value;
}

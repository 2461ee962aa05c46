import { invalid, type Outcome } from "../outcome/problem.ts";
import { confidenceProblem } from "./confidence-problem.ts";
import { normalQuantile } from "./normal-quantile.ts";

/**
 * Limits of a share, `hits` out of `tries`, 95 % unless told otherwise: the score limits of Wilson (1927, Journal of
 * the American Statistical Association 22, 209-212). They stay within 0 and 1 and hold up for few tries.
 *
 * @example wilson(81, 263) // { share: 0.308, low: 0.2553, high: 0.3662 }
 */
export function wilson(
  hits: number,
  tries: number,
  confidence = 0.95,
): Outcome<{ readonly share: number; readonly low: number; readonly high: number }> {
  const problem = confidenceProblem(confidence);
  if (problem) return problem;
  if (!(Number.isInteger(tries) && tries > 0)) {
    return invalid(`tries is ${tries}; a whole number of at least 1 would do.`);
  }
  if (!(Number.isInteger(hits) && hits >= 0 && hits <= tries)) {
    return invalid(`hits is ${hits}; a whole number from 0 to ${tries} would do.`);
  }
  const z = normalQuantile((1 + confidence) / 2);
  const share = hits / tries;
  const middle = (share + (z * z) / (2 * tries)) / (1 + (z * z) / tries);
  const half = ((z / (1 + (z * z) / tries)) * Math.sqrt(tries * share * (1 - share) + (z * z) / 4)) / tries;
  return { share, low: hits === 0 ? 0 : middle - half, high: hits === tries ? 1 : middle + half };
}

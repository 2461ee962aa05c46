import { invalid, type Outcome, unavailable } from "../outcome/problem.ts";

/** What is known of a build for the choice of the next shot. */
export interface Candidate {
  readonly n: number;
  readonly mean: number;
  /** Null below two shots. */
  readonly sd: number | null;
}

/** Each build is hit this often before averages say anything about where to look next. */
export const FIRST_SHOTS = 3;

/**
 * The number of the build whose next shot says most about which is best: the optimal computing budget allocation of
 * Chen, Lin, Yücesan and Chick 2000 (Discrete Event Dynamic Systems 10, 251-270). Shots go where a rival is close to
 * the best or spreads widely: rival i gets its share in proportion to (s_i / d_i)^2, the best one
 * s_b sqrt(sum of (share_i / s_i)^2). The build that lags its share most is next. Spreads are pooled while a build
 * has few shots, and distances are held away from nought by their own error, since with three shots they are rough.
 */
export function nextBuild(candidates: readonly Candidate[], better: "high" | "low"): Outcome<number> {
  if (candidates.length < 2) return invalid("There should be at least two builds to choose between.");
  const least = Math.min(...candidates.map(({ n }) => n));
  if (least < FIRST_SHOTS) return candidates.findIndex(({ n }) => n === least);
  const spreads = shrunkSpreads(candidates);
  if (spreads === null)
    return unavailable("Every shot of every build is the same; more shots would tell nothing.");
  const sign = better === "high" ? 1 : -1;
  const best = candidates.reduce((b, { mean }, i) => (sign * mean > sign * candidates[b]!.mean ? i : b), 0);
  const shares = candidates.map(({ mean, n }, i) => {
    if (i === best) return 0;
    const distance = candidates[best]!.mean - mean;
    const error = spreads[i]! ** 2 / n + spreads[best]! ** 2 / candidates[best]!.n;
    return spreads[i]! ** 2 / (distance ** 2 + error);
  });
  shares[best] =
    spreads[best]! * Math.sqrt(shares.reduce((sum, share, i) => sum + (share / spreads[i]!) ** 2, 0));
  const all = shares.reduce((a, b) => a + b, 0);
  const total = candidates.reduce((sum, { n }) => sum + n, 0) + 1;
  const lag = candidates.map(({ n }, i) => (shares[i]! / all) * total - n);
  return lag.indexOf(Math.max(...lag));
}

/** Each build's own spread, leaned on the pooled one as if that were worth four shots of its own. */
function shrunkSpreads(candidates: readonly Candidate[]): number[] | null {
  const known = candidates.filter(({ n, sd }) => n > 1 && sd !== null);
  const df = known.reduce((sum, { n }) => sum + n - 1, 0);
  const pooled = known.reduce((sum, { n, sd }) => sum + (n - 1) * sd! ** 2, 0) / df;
  if (!(pooled > 0)) return null;
  return candidates.map(({ n, sd }) => Math.sqrt((4 * pooled + (n - 1) * (sd ?? 0) ** 2) / (4 + n - 1)));
}

import { averageOverSpread } from "./average-over-spread.ts";
import { normalUpperTail } from "./normal-upper-tail.ts";

/**
 * The probability that noncentral t exceeds `t`: a standard normal value plus `shift`, over an estimated spread
 * with `df` degrees of freedom. Given the ratio u of estimated to true spread it is a normal tail, averaged over u
 * (Owen 1965, Biometrika 52, 437-446). For callers that have checked df > 0.
 */
export function noncentralTUpperTail(t: number, df: number, shift: number): number {
  return averageOverSpread(df, (u) => [normalUpperTail(t * u - shift)])[0]!;
}

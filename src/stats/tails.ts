/**
 * Where a value of a positive variable lies in its distribution, all as natural logarithms, which neither round to
 * nought far out nor lose the digits of the small tail: the probability below, the probability above, and the
 * height of the density against the logarithm of the variable.
 */
export interface Tails {
  readonly logLower: number;
  readonly logUpper: number;
  readonly logHeight: number;
}

/** Tails from the height and one tail in heights; the other tail, which is not the small one, makes up the whole. */
export function tailsFrom(logHeight: number, share: number, side: "lower" | "upper"): Tails {
  const near = Math.min(0, logHeight + Math.log(share));
  const far = Math.log1p(-Math.exp(near));
  return side === "lower"
    ? { logLower: near, logUpper: far, logHeight }
    : { logLower: far, logUpper: near, logHeight };
}

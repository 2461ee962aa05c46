/**
 * Where a rising function reaches a value, by the Illinois form of false position (Dowell and Jarratt 1971, BIT 11,
 * 168-174), to about 1e-13 relative. `low` and `high` must enclose the answer.
 */
export function solveRising(f: (x: number) => number, value: number, low: number, high: number): number {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a) - value, f(b) - value];
  // Stryker disable next-line EqualityOperator,UpdateOperator: a bound that the rule does not come to
  for (let i = 0; i < 100; i++) {
    // A rising function is the same at both ends where they are the same.
    if (fa === fb) return b;
    const x = (a * fb - b * fa) / (fb - fa);
    if (Math.abs(x - b) <= 1e-13 * Math.abs(x)) return x;
    const fx = f(x) - value;
    if (Math.sign(fx) !== Math.sign(fb)) [a, fa] = [b, fb];
    else fa /= 2;
    [b, fb] = [x, fx];
  }
  return b;
}

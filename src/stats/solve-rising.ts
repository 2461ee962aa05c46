/**
 * Where a rising function reaches a value, by the Illinois form of false position (Dowell and Jarratt 1971, BIT 11,
 * 168-174), to about 1e-13 relative. `low` and `high` must enclose the answer.
 */
export function solveRising(f: (x: number) => number, value: number, low: number, high: number): number {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a) - value, f(b) - value];
  for (let i = 0; i < 100; i++) {
    const x = Math.abs(fb - fa) > 0 ? (a * fb - b * fa) / (fb - fa) : (a + b) / 2;
    const fx = f(x) - value;
    if (fx === 0 || Math.abs(x - b) <= 1e-13 * Math.abs(x)) return x;
    if (fx * fb < 0) [a, fa] = [b, fb];
    else fa /= 2;
    [b, fb] = [x, fx];
  }
  return b;
}

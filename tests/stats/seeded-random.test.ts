import { expect, test } from "vitest";
import { seededRandom, xoshiro128 } from "../../src/stats/seeded-random.ts";

// Output of the authors' reference program xoshiro128starstar.c (version 1.1) from the state 1, 2, 3, 4.
test("the generator gives the numbers of its authors' reference program", () => {
  const next = xoshiro128(Uint32Array.of(1, 2, 3, 4));
  expect(Array.from({ length: 10 }, () => next())).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});

test("the same seed repeats and another seed differs", () => {
  const draw = (seed: number) => {
    const random = seededRandom(seed);
    return Array.from({ length: 5 }, () => random.uniform());
  };
  expect(draw(1)).toEqual(draw(1));
  expect(draw(1)).not.toEqual(draw(2));
  expect(draw(0).every((value) => value >= 0 && value < 1)).toBe(true);
});

// Moments of the normal distribution: 0, 1, 0, 3. Standard errors for n draws: 1, sqrt 2, sqrt 15, sqrt 96 over root n.
test("normal values have normal moments", () => {
  const random = seededRandom(42);
  const n = 200_000;
  const moments = [0, 0, 0, 0];
  for (let i = 0; i < n; i++) {
    const z = random.normal();
    for (let power = 1; power <= 4; power++) moments[power - 1]! += z ** power / n;
  }
  [0, 1, 0, 3].forEach((moment, i) => {
    const error = Math.sqrt([1, 2, 15, 96][i]! / n);
    expect(Math.abs(moments[i]! - moment)).toBeLessThan(4 * error);
  });
});

// Written a second time in Python, with whole numbers of any size, from the description at `seededRandom`.
test("a seed gives the same numbers everywhere", () => {
  const one = seededRandom(1);
  expect([1, 2, 3, 4].map(() => one.uniform())).toEqual([
    0.5686059948349658, 0.8893939367683266, 0.4705824180198359, 0.35296769838967534,
  ]);
  const seven = seededRandom(7);
  for (const value of [
    -1.5370383110628956, -0.2949978339025397, 2.7798852822589497, 0.5592582996313386, 1.170719761828895,
    0.22119921662173933,
  ]) {
    expect(seven.normal()).toBeCloseTo(value, 14);
  }
});

import { expect, test } from "vitest";
import { bestOfNormals, nearestOfNormals } from "../../src/stats/best-of-normals.ts";
import { normalUpperTail } from "../../src/stats/normal-upper-tail.ts";

const below = (z: number) => normalUpperTail(-z);

function expectChances(found: readonly number[], expected: readonly number[], digits: number) {
  expect(found).toHaveLength(expected.length);
  expected.forEach((chance, i) => {
    expect(found[i]).toBeCloseTo(chance, digits);
  });
}

// The difference of two normal values is normal.
test.each([
  [0, 1, 0.3, 1],
  [250, 2, 256, 5],
  [-3, 0.2, 1, 4],
  [1e6, 3, 1e6 + 40, 7],
])(
  "of two means, %d give or take %d and %d give or take %d, one is higher by the normal curve",
  (a, sa, b, sb) => {
    const first = below((a - b) / Math.hypot(sa, sb));
    expectChances(bestOfNormals({ centre: [a, b], sd: [sa, sb] }), [first, 1 - first], 7);
  },
);

// Sheppard 1899: the chance that two standard normal values of correlation r are both above nought is
// 1 / 4 + arcsin(r) / (2 pi); here of a mean less either of the others.
test("of three means about one point each is the highest as Sheppard's formula has it", () => {
  const sd = [1, 2, 0.7];
  const expected = sd.map((own, i) => {
    const [one, other] = sd.filter((_, j) => j !== i) as [number, number];
    const r = own ** 2 / (Math.hypot(own, one) * Math.hypot(own, other));
    return 1 / 4 + Math.asin(r) / (2 * Math.PI);
  });
  expectChances(bestOfNormals({ centre: [5, 5, 5], sd }), expected, 7);
  expectChances(bestOfNormals({ centre: [0, 0, 0, 0], sd: [3, 3, 3, 3] }), [0.25, 0.25, 0.25, 0.25], 7);
});

// The ratio of two normal values about nought is Cauchy.
test("of two means about the target the surer one is nearer by the arctangent of the ratio", () => {
  const first = (2 / Math.PI) * Math.atan(3 / 1.2);
  expectChances(nearestOfNormals({ centre: [160, 160], sd: [1.2, 3] }, 160), [first, 1 - first], 6);
});

// |X| < |Y| where Y - X and Y + X have the same sign, and these are independent when X and Y spread alike.
test.each([
  [-1, 2, 1.5],
  [0.2, 0.1, 1],
  [-7, 8, 1],
  [30, -25, 4],
  [30, -29, 1],
])(
  "of two means %d and %d from the target that spread alike by %d one is nearer by two normal curves",
  (x, y, sd) => {
    const [apart, around] = [(y - x) / (sd * Math.SQRT2), (y + x) / (sd * Math.SQRT2)];
    const first = below(apart) * below(around) + below(-apart) * below(-around);
    const found = nearestOfNormals({ centre: [100 + x, 100 + y], sd: [sd, sd] }, 100);
    expectChances(found, [first, 1 - first], 6);
  },
);

test("means on either side of the target, equally far off, are equally often the nearest", () => {
  const found = nearestOfNormals({ centre: [97, 103, 103], sd: [2, 2, 2] }, 100);
  expectChances(found, [1 / 3, 1 / 3, 1 / 3], 6);
});

test("a mean a million of its spreads below another is told from it at once", () => {
  expectChances(bestOfNormals({ centre: [0, 1e6], sd: [1e-3, 1] }), [0, 1], 9);
  expectChances(nearestOfNormals({ centre: [0, 1e6], sd: [1e-3, 1] }, 1e6), [0, 1], 6);
});

// Averaged over the one that surely lies on one side of the target, the two halves of the other's curve.
test("a mean known closely, aside of the target, beside one that is hardly known about it", () => {
  const second = 2 * below(5 / Math.hypot(3, 0.05)) - 1;
  expectChances(nearestOfNormals({ centre: [160, 165], sd: [3, 0.05] }, 160), [second, 1 - second], 6);
});

import { expect, test } from "vitest";
import { covarianceOf, presentPoints } from "../../src/stats/covariance-of.ts";
import { type Ellipse, type Hotelling, hotellingEllipse, hotellingTest } from "../../src/stats/index.ts";
import { expectClose } from "./expect-close.ts";
import { sodium, sweatRate } from "./published-data.ts";

// Johnson and Wichern, Applied Multivariate Statistical Analysis, example 5.2 with its first two variables,
// recomputed with 40-digit arithmetic: T squared against (4, 50), its tail, and its 5 % limit.
test("the sweat data have the published centre and covariance", () => {
  const found = covarianceOf(presentPoints(sweatRate, sodium));
  expectClose(found.meanX, 4.64, 1e-14);
  expectClose(found.meanY, 45.4, 1e-14);
  expectClose(found.varianceX, 2.8793684210526314);
  expectClose(found.covariance, 10.01);
  expectClose(found.varianceY, 199.78842105263152);
});

test("Hotelling's T squared of the sweat data agrees with 40-digit arithmetic", () => {
  const found = hotellingTest(sweatRate, sodium, 4, 50) as Hotelling;
  expectClose(found.tSquared, 8.491466234468142);
  expectClose(found.f, 4.022273479484909);
  expect(found.df).toEqual([2, 18]);
  expectClose(found.p, 0.03597503952945557);
});

test("every point of the limits of the centre has T squared at its published limit", () => {
  const ellipse = hotellingEllipse(sweatRate, sodium) as Ellipse;
  const turn = (ellipse.angle * Math.PI) / 180;
  for (const around of [0, 0.7, 2, 4.5]) {
    const along = ellipse.longHalf * Math.cos(around);
    const across = ellipse.shortHalf * Math.sin(around);
    const x = ellipse.centreX + along * Math.cos(turn) - across * Math.sin(turn);
    const y = ellipse.centreY + along * Math.sin(turn) + across * Math.cos(turn);
    const there = hotellingTest(sweatRate, sodium, x, y) as Hotelling;
    expectClose(there.tSquared, 7.504065085285995, 1e-11);
    expectClose(there.p, 0.05, 1e-11);
  }
  expectClose(ellipse.area, Math.PI * ellipse.longHalf * ellipse.shortHalf);
});

test("two shots have no limits, and shots on a line have no test across it", () => {
  expect(hotellingEllipse([1, 2], [3, 5])).toMatchObject({ kind: "unavailable" });
  expect(hotellingEllipse([1, 2, Number.NaN], [3, 5, 6])).toMatchObject({
    kind: "unavailable",
    message: expect.stringContaining("2"),
  });
  expect(hotellingTest([1, 2, 3], [2, 4, 6], 0, 0)).toMatchObject({ kind: "unavailable" });
});

test("a confidence of 95 is refused by name", () => {
  expect(hotellingEllipse(sweatRate, sodium, 95)).toMatchObject({
    kind: "invalid",
    message: expect.stringContaining("confidence"),
  });
});

// With two and one degrees of freedom F exceeds f with probability 1 / sqrt(1 + 2 f), so 95 % lie below 199.5. By hand:
// three points of a right triangle with legs of 1 have variances of a third and a covariance of minus a sixth, so the
// long eigenvalue is a half; T squared against the origin is 4, and F is a quarter of that.
test("three shots have limits of their centre and a test of it", () => {
  const [x, y] = [
    [0, 1, 0],
    [0, 0, 1],
  ];
  const ellipse = hotellingEllipse(x, y) as Ellipse;
  expectClose(ellipse.longHalf, Math.sqrt((0.5 * 4 * 199.5) / 3));
  const found = hotellingTest(x, y, 0, 0) as Hotelling;
  expectClose(found.tSquared, 4);
  expectClose(found.p, 1 / Math.sqrt(3));
});

test("whether shots lie on one line does not hang on the unit", () => {
  const once = hotellingTest(sweatRate, sodium, 4, 50) as Hotelling;
  for (const unit of [1e-6, 1e6]) {
    const scaled = hotellingTest(
      sweatRate.map((value) => value * unit),
      sodium.map((value) => value / unit),
      4 * unit,
      50 / unit,
    ) as Hotelling;
    expectClose(scaled.tSquared, once.tSquared, 1e-11);
    const both = hotellingTest(
      sweatRate.map((value) => value * unit),
      sodium.map((value) => value * unit),
      4 * unit,
      50 * unit,
    ) as Hotelling;
    expectClose(both.tSquared, once.tSquared, 1e-11);
  }
  const still = { kind: "unavailable", message: expect.stringContaining("one line") };
  expect(hotellingTest([3, 3, 3], [1, 2, 4], 0, 0)).toMatchObject(still);
  expect(hotellingTest([0.1, 0.2, 0.3], [0.3, 0.6, 0.9], 0, 0)).toMatchObject(still);
});

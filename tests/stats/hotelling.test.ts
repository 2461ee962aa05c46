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

import { expect, test } from "vitest";
import { type Ellipse, normalEllipse, seededRandom } from "../../src/stats/index.ts";
import { QUICK } from "../quick.ts";
import { expectClose } from "./expect-close.ts";

// Eight points with variances 4 and 1 along axes turned by 30 degrees: by hand the sums of squares along the axes are
// 28 and 7 for n - 1 = 7, so half axes are 2 and 1 times the root of chi-square(0.95, 2) = 5.991464547107982.
const along = [Math.sqrt(14), -Math.sqrt(14), 0, 0, 0, 0, 0, 0];
const across = [0, 0, Math.sqrt(3.5), -Math.sqrt(3.5), 0, 0, 0, 0];
const cos30 = Math.sqrt(3) / 2;
const x = along.map((a, i) => 250 + a * cos30 - across[i]! / 2);
const y = along.map((a, i) => 3 + a / 2 + across[i]! * cos30);

test("the ellipse of a group lies along its long axis to the chi-square quantile", () => {
  const found = normalEllipse(x, y) as Ellipse;
  expectClose(found.longHalf, 2 * Math.sqrt(5.991464547107982), 1e-12);
  expectClose(found.shortHalf, Math.sqrt(5.991464547107982), 1e-12);
  expectClose(found.angle, 30, 1e-12);
  expectClose(found.centreX, 250, 1e-14);
});

// Johnson and Wichern 2007, section 5.4, with F(0.95; 2, 6) = 5.14325 (Abramowitz and Stegun, table 26.9).
test("the ellipse for the next shot is wider, by the F quantile", () => {
  const next = normalEllipse(x, y, 0.95, "next") as Ellipse;
  expectClose(next.shortHalf, Math.sqrt(((2 * 9 * 7) / (8 * 6)) * 5.14325285), 1e-8);
});

test.skipIf(QUICK)("of next shots 95 in 100 fall inside the ellipse drawn from four", () => {
  const random = seededRandom(20);
  const rounds = 20000;
  let inside = 0;
  for (let round = 0; round < rounds; round++) {
    const draw = () => Array.from({ length: 5 }, () => 5 * random.normal());
    const [carry, offline] = [draw(), draw()];
    const e = normalEllipse(carry.slice(1), offline.slice(1), 0.95, "next") as Ellipse;
    const turn = (e.angle * Math.PI) / 180;
    const [dx, dy] = [carry[0]! - e.centreX, offline[0]! - e.centreY];
    const u = (dx * Math.cos(turn) + dy * Math.sin(turn)) / e.longHalf;
    const v = (dy * Math.cos(turn) - dx * Math.sin(turn)) / e.shortHalf;
    if (u * u + v * v <= 1) inside++;
  }
  expect(Math.abs(inside / rounds - 0.95)).toBeLessThan(4 * Math.sqrt((0.95 * 0.05) / rounds));
});

test("shots on one line make an ellipse without width, and two shots make none", () => {
  const flat = normalEllipse([1, 2, 3], [2, 4, 6]) as Ellipse;
  expect(flat.shortHalf).toBeLessThan(1e-7);
  expectClose(flat.angle, (Math.atan(2) * 180) / Math.PI, 1e-12);
  expect(normalEllipse([1, 2], [2, 4])).toMatchObject({ kind: "unavailable" });
  expect(normalEllipse([1, 2, 3], [2, 4, 5], 95)).toMatchObject({
    kind: "invalid",
    message: expect.stringContaining("share"),
  });
});

test("a group of one and the same place has an ellipse of no size there", () => {
  expect(normalEllipse([250, 250, 250], [3, 3, 3])).toEqual({
    centreX: 250,
    centreY: 3,
    longHalf: 0,
    shortHalf: 0,
    angle: 0,
    area: 0,
  });
});

import { describe, expect, test } from "vitest";
import { airOfDensity } from "../../../src/flight/air/air.ts";
import { type LoftFigure, loftChange } from "../../../src/flight/uses/loft-change.ts";
import { figure } from "../expect-figure.ts";

const EMPTY = { density: 0, viscosity: 1.8e-5 };
const SEA = airOfDensity(1.225);
const IRON = { speed: 52, launch: 17, spin: 6600 };

// Source: the rules of the doc comment evaluated in Python, flown without air: v^2 sin(2 launch) / g and
// (v sin launch)^2 / 2 g. Each: with a grip of 0.19 and all of the bend, then the least and greatest of all assumptions.
const LOFTS: readonly [string, typeof IRON, number, Record<string, readonly [number, number, number]>][] = [
  [
    "an iron 2 degrees weaker",
    IRON,
    2,
    {
      dynamicLoft: [25.512986500365916, 25.112986500365917, 25.512986500365916],
      launch: [18.478859441967607, 18.16394464291614, 18.50162018079354],
      ballSpeed: [50.9328756434897, 50.80196352448149, 51.236396695740154],
      spin: [6979.318370707743, 6871.836779823117, 7019.669835168976],
      height: [13.287405719334021, 12.96476615565645, 13.306997475844161],
      landingAngle: [18.478859441967607, 18.16394464291614, 18.50162018079354],
      carry: [159.04247224763205, 157.70076897126685, 159.5176632939038],
    },
  ],
  [
    "a driver 2 degrees stronger",
    { speed: 70, launch: 14, spin: 2500 },
    -2,
    {
      dynamicLoft: [13.829024913442023, 13.829024913442023, 14.229024913442023],
      launch: [12.38829424523339, 12.34955247591594, 12.742116807570332],
      ballSpeed: [70.35433783178884, 70.25777465174964, 70.40384657056258],
      spin: [1979.3565099339792, 1924.712240711478, 2127.4170884718837],
      height: [11.61530383550962, 11.560148177270158, 12.243465604913835],
      landingAngle: [12.38829424523339, 12.34955247591594, 12.742116807570332],
      carry: [211.52377202610785, 211.20077203334105, 216.57175389179778],
    },
  ],
];

describe.each(LOFTS)("%s", (_name, strike, delta, expected) => {
  test("leaves as the assumptions say", () => {
    const { after } = figure(loftChange({ strike }, delta, EMPTY));
    for (const [key, [value, low, high]] of Object.entries(expected)) {
      const found = after[key as LoftFigure];
      expect([key, found.value]).toEqual([key, expect.closeTo(value, 5)]);
      expect([key, found.low]).toEqual([key, expect.closeTo(low, 5)]);
      expect([key, found.high]).toEqual([key, expect.closeTo(high, 5)]);
    }
  });

  test("changes by what it is after less what it was before", () => {
    const { after, change } = figure(loftChange({ strike }, delta, EMPTY));
    const carry = (strike.speed ** 2 * Math.sin((2 * strike.launch * Math.PI) / 180)) / 9.80665;
    expect(after.carry.value - change.carry.value).toBeCloseTo(carry, 6);
    expect(after.dynamicLoft.value - change.dynamicLoft.value).toBeCloseTo(
      after.dynamicLoft.value - delta,
      9,
    );
    expect(after.launch.low - change.launch.low).toBeCloseTo(strike.launch, 9);
    expect(after.spin.high - change.spin.high).toBeCloseTo(strike.spin, 9);
  });
});

test("a measured carry changes in proportion to the computed ones", () => {
  const computed = figure(loftChange({ strike: IRON }, 2, EMPTY));
  const measured = figure(loftChange({ strike: IRON, carry: 120 }, 2, EMPTY));
  // Without air the iron carries v^2 sin(2 launch) / g = 154.187 m.
  expect(measured.after.carry.value).toBeCloseTo((120 * 159.04247224763205) / 154.18696608779754, 6);
  expect(measured.change.carry.value).toBeCloseTo(measured.after.carry.value - 120, 9);
  expect(measured.after.height).toEqual(computed.after.height);
});

test("a strike whose flight comes to nothing keeps the computed carries", () => {
  const topped = { speed: 40, launch: -5, spin: 2500 };
  const { after } = figure(loftChange({ strike: topped, carry: 60 }, 1, SEA));
  expect(after.carry.value).toBeCloseTo(0, 6);
});

test("a ball without spin keeps to none, since nothing says what its spin loft was", () => {
  const { after } = figure(loftChange({ strike: { speed: 60, launch: 15, spin: 0 } }, 2, SEA));
  expect(after.spin).toEqual({ value: 0, low: 0, high: 0 });
});

test("a loft change says which figure of the strike cannot be flown", () => {
  expect(loftChange({ strike: { ...IRON, spin: -5 } }, 2, SEA)).toMatchObject({
    message: "spin should be 0 to 20000 rpm, not -5",
  });
  const steep = loftChange({ strike: { speed: 50, launch: 85, spin: 2000 } }, 10, SEA);
  expect(steep).toMatchObject({ kind: "invalid", message: expect.stringContaining("launch angle") });
});

test("a face that would look along the ground the ball leaves has no answer", () => {
  // A spin ratio of 2.2 puts the ball asin(0.89) below the normal, which by a grip of 0.19 is a spin loft of 84.6 degrees.
  const slow = { speed: 20, launch: 20, spin: 20_000 };
  expect(loftChange({ strike: slow }, 10, SEA)).toMatchObject({ kind: "unavailable" });
});

import fc from "fast-check";
import { expect, test } from "vitest";
import { airOfDensity } from "../../../src/flight/air/air.ts";
import type { CoefficientModel } from "../../../src/flight/ball/coefficient-model.ts";
import { constantCoefficients } from "../../../src/flight/ball/constant-coefficients.ts";
import { EXTENDED_BEARMAN_HARVEY } from "../../../src/flight/ball/extended-bearman-harvey.ts";
import { flightPath } from "../../../src/flight/trajectory/flight-path.ts";
import { flyBall, TOLERANCE } from "../../../src/flight/trajectory/fly-ball.ts";
import { isProblem } from "../../../src/outcome/problem.ts";
import { QUICK } from "../../quick.ts";
import { figure } from "../expect-figure.ts";

const AIR = airOfDensity(1.225);
const MPH = 0.44704;
const YARD = 0.9144;

/** The whole working range: 40 to 190 mph, 0 to 60 degrees, 0 to 12,000 rpm, any axis, wind and air. */
const strikes = fc.record({
  speed: fc.double({ min: 40 * MPH, max: 190 * MPH, noNaN: true }),
  launch: fc.double({ min: 0, max: 60, noNaN: true }),
  spin: fc.double({ min: 0, max: 12_000, noNaN: true }),
  axis: fc.double({ min: -60, max: 60, noNaN: true }),
  direction: fc.double({ min: -20, max: 20, noNaN: true }),
});
const airs = fc.double({ min: 0.8, max: 1.35, noNaN: true }).map((density) => airOfDensity(density));
const winds = fc.record({
  along: fc.double({ min: -15, max: 15, noNaN: true }),
  across: fc.double({ min: -15, max: 15, noNaN: true }),
});

test.skipIf(QUICK)("halving the tolerance moves no carry of the working range by 0.02 yd", () => {
  let worst = 0;
  for (let mph = 40; mph <= 190; mph += 15) {
    for (let launch = 0; launch <= 60; launch += 6) {
      for (let spin = 0; spin <= 12_000; spin += 750) {
        const strike = { speed: mph * MPH, launch, spin, axis: (launch % 21) - 10 };
        const coarse = figure(flyBall(strike, AIR)).carry;
        const fine = figure(flyBall(strike, AIR, { tolerance: TOLERANCE / 2 })).carry;
        worst = Math.max(worst, Math.abs(coarse - fine) / YARD);
      }
    }
  }
  expect(worst).toBeLessThan(0.02);
});

test("every flight of the working range comes down with finite figures, in any wind", () => {
  fc.assert(
    fc.property(strikes, airs, winds, (strike, air, wind) => {
      const flight = figure(flyBall(strike, air, { wind }));
      const { outside, ...figures } = flight;
      expect(typeof outside).toBe("boolean");
      for (const value of Object.values(figures)) expect(Number.isFinite(value)).toBe(true);
      expect(flight.height).toBeGreaterThanOrEqual(0);
      expect(flight.landingAngle).toBeGreaterThanOrEqual(0);
      expect(flight.landingAngle).toBeLessThanOrEqual(90);
    }),
    { numRuns: 1000 },
  );
});

test("left and right are mirror images", () => {
  fc.assert(
    fc.property(strikes, airs, winds, (strike, air, wind) => {
      const right = figure(flyBall(strike, air, { wind }));
      const mirrored = { ...strike, axis: -strike.axis, direction: -strike.direction };
      const left = figure(flyBall(mirrored, air, { wind: { along: wind.along, across: -wind.across } }));
      expect(left.carry).toBeCloseTo(right.carry, 9);
      expect(left.offline).toBeCloseTo(-right.offline, 9);
      expect(left.landingAngle).toBeCloseTo(right.landingAngle, 9);
    }),
    { numRuns: 300 },
  );
});

test("denser air never carries a ball without lift farther", () => {
  const noLift: CoefficientModel = {
    ...EXTENDED_BEARMAN_HARVEY,
    coefficients(point) {
      EXTENDED_BEARMAN_HARVEY.coefficients(point);
      point[4] = 0;
    },
  };
  const denser = fc.double({ min: 1.005, max: 1.45, noNaN: true });
  for (const model of [noLift, constantCoefficients(0.25, 0)]) {
    fc.assert(
      fc.property(strikes, airs, denser, (strike, air, by) => {
        const thin = figure(flyBall({ ...strike, direction: 0 }, air, { model })).carry;
        const thick = figure(
          flyBall({ ...strike, direction: 0 }, airOfDensity(air.density * by), { model }),
        ).carry;
        expect(thick).toBeLessThanOrEqual(thin + 1e-6);
      }),
      { numRuns: 300 },
    );
  }
});

test("anything at all gives a flight or a problem, never a throw and never NaN", () => {
  const any = fc.oneof(fc.double(), fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, 0, -1, 1e9));
  fc.assert(
    fc.property(any, any, any, any, any, (speed, launch, spin, density, ground) => {
      const flight = flyBall({ speed, launch, spin }, { density, viscosity: 1.8e-5 }, { ground });
      if (!isProblem(flight)) expect(Number.isFinite(flight.carry)).toBe(true);
    }),
    { numRuns: 2000 },
  );
});

test("a shot is flagged where it leaves what the wind tunnel measured", () => {
  expect(figure(flyBall({ speed: 65, launch: 13, spin: 3800 }, AIR)).outside).toBe(false);
  expect(figure(flyBall({ speed: 45, launch: 25, spin: 9500 }, AIR)).outsideShare).toBe(1);
  const drive = figure(flyBall({ speed: 75, launch: 12, spin: 2200 }, AIR));
  expect(drive.outside).toBe(true);
  expect(drive.outsideShare).toBeLessThan(1);
});

test("a ball that cannot get up to the ground says so", () => {
  const low = flyBall({ speed: 40, launch: 5, spin: 2500 }, AIR, { ground: 50 });
  expect(low).toEqual({ kind: "unavailable", message: "the ball never gets up to the height of the ground" });
});

test("a ball struck down on level ground lands where it started", () => {
  expect(figure(flyBall({ speed: 40, launch: -3, spin: 2500 }, AIR)).carry).toBeCloseTo(0, 9);
});

test("the path for drawing starts at the ball, passes the top and ends at the landing", () => {
  const strike = { speed: 55, launch: 17, spin: 6500, axis: -6, direction: 2 };
  const flight = figure(flyBall(strike, AIR));
  const path = figure(flightPath(strike, AIR, {}, 201));
  expect(path).toHaveLength(201);
  expect(path[0]).toEqual({ time: 0, x: 0, y: 0, z: 0 });
  expect(path[200]!.x).toBeCloseTo(flight.carry, 8);
  expect(path[200]!.y).toBeCloseTo(0, 8);
  expect(path[200]!.z).toBeCloseTo(flight.offline, 8);
  expect(Math.max(...path.map((point) => point.y))).toBeCloseTo(flight.height, 2);
});

test("an option that is given takes the place of what flights usually have", () => {
  const strike = { speed: 60, launch: 14, spin: 4000 };
  const plain = figure(flyBall(strike, AIR));
  expect(plain).toEqual(
    figure(
      flyBall(strike, AIR, {
        model: EXTENDED_BEARMAN_HARVEY,
        wind: { along: 0, across: 0 },
        ground: 0,
        factors: { drag: 1, lift: 1 },
        decay: 2e-5,
        gravity: 9.80665,
        tolerance: 2e-5,
      }),
    ),
  );
  // Drag and lift are in proportion to their factors as they are to density, but for the Reynolds number.
  const model = constantCoefficients(0.25, 0.15);
  const dense = figure(flyBall(strike, { ...AIR, density: AIR.density * 1.2 }, { model }));
  expect(figure(flyBall(strike, AIR, { model, factors: { drag: 1.2, lift: 1.2 } }))).toEqual(dense);
});

test("a flight names the figure that cannot be flown", () => {
  const strike = { speed: 60, launch: 14, spin: 4000 };
  const refused = [
    [{ ...strike, speed: 0 }, AIR, {}, "ball speed should be 1 to 120 m/s, not 0"],
    [{ ...strike, axis: 91 }, AIR, {}, "spin axis should be -90 to 90 degrees, not 91"],
    [{ ...strike, direction: -91 }, AIR, {}, "direction should be -90 to 90 degrees, not -91"],
    [strike, { ...AIR, density: 3 }, {}, "air density should be 0 to 2 kg/m3, not 3"],
    [strike, { ...AIR, viscosity: 1 }, {}, "air viscosity should be 0.000001 to 0.0001 Pa s, not 1"],
    [strike, AIR, { ground: 201 }, "ground height should be -200 to 200 m, not 201"],
    [strike, AIR, { wind: { along: 61, across: 0 } }, "wind along should be -60 to 60 m/s, not 61"],
    [strike, AIR, { wind: { along: 0, across: -61 } }, "wind across should be -60 to 60 m/s, not -61"],
  ] as const;
  for (const [wrong, air, options, message] of refused) {
    expect(flyBall(wrong, air, options)).toEqual({ kind: "invalid", message });
    expect(flightPath(wrong, air, options)).toEqual({ kind: "invalid", message });
  }
});

test("a ball that is up for more than a minute has no landing", () => {
  // Without air and with a tenth of gravity it is up for 2 x 100 sin(80) / 0.98 = 201 s.
  const floating = flyBall(
    { speed: 100, launch: 80, spin: 0 },
    { density: 0, viscosity: 1.8e-5 },
    { gravity: 0.98 },
  );
  expect(floating).toEqual({ kind: "unavailable", message: "no landing within 60 s" });
});

test("a raised green is reached by a ball whose last step passes over it, and one a little higher is not", () => {
  // Source: without air the top is (v sin launch)^2 / 2 g = 20.394 m, between two knots.
  const empty = { density: 0, viscosity: 1.8e-5 };
  const strike = { speed: 40, launch: 30, spin: 0 };
  const top = 20 ** 2 / (2 * 9.80665);
  expect(figure(flyBall(strike, empty, { ground: top - 0.01 })).carry).toBeCloseTo(
    40 * Math.cos(Math.PI / 6) * (20 / 9.80665 + Math.sqrt(0.02 / 9.80665)),
    4,
  );
  expect(flyBall(strike, empty, { ground: top + 0.01 })).toMatchObject({ kind: "unavailable" });
  // A valley instead: it falls on for sqrt(2 (top + 30) / g) after the top.
  expect(figure(flyBall(strike, empty, { ground: -30 })).time).toBeCloseTo(
    20 / 9.80665 + Math.sqrt((2 * (top + 30)) / 9.80665),
    6,
  );
});

test("a flight that starts to the side is the straight one turned about the vertical", () => {
  const strike = { speed: 60, launch: 14, spin: 4000, axis: 12 };
  const straight = figure(flyBall(strike, AIR));
  const aside = figure(flyBall({ ...strike, direction: 25 }, AIR));
  const [cos, sin] = [Math.cos((25 * Math.PI) / 180), Math.sin((25 * Math.PI) / 180)];
  expect(straight.offline).toBeGreaterThan(5);
  expect(aside.carry).toBeCloseTo(straight.carry * cos - straight.offline * sin, 3);
  expect(aside.offline).toBeCloseTo(straight.carry * sin + straight.offline * cos, 3);
  expect(aside.height).toBeCloseTo(straight.height, 3);
});

test("a ball struck down into a valley flies on below where it started", () => {
  // Source: without air, 20 m down from 40 m/s at -10 degrees: t = (-v s + sqrt((v s)^2 + 2 g 20)) / g.
  const empty = { density: 0, viscosity: 1.8e-5 };
  const down = 40 * Math.sin((10 * Math.PI) / 180);
  const time = (-down + Math.sqrt(down ** 2 + 2 * 9.80665 * 20)) / 9.80665;
  const flight = figure(flyBall({ speed: 40, launch: -10, spin: 2500 }, empty, { ground: -20 }));
  expect(flight.time).toBeCloseTo(time, 6);
  expect(flight.carry).toBeCloseTo(40 * Math.cos((10 * Math.PI) / 180) * time, 5);
  expect(flight.height).toBe(0);
});

test("wind across carries a ball without lift as the moving air would", () => {
  // In a frame that moves with the air the ball starts with the opposite of the wind: a rotation about the vertical.
  const model = constantCoefficients(0.3, 0);
  const strike = { speed: 50, launch: 20, spin: 0 };
  const level = 50 * Math.cos((20 * Math.PI) / 180);
  const up = 50 * Math.sin((20 * Math.PI) / 180);
  const wind = { along: 4, across: 9 };
  const [x, z] = [level - wind.along, -wind.across];
  const still = figure(
    flyBall(
      {
        speed: Math.hypot(x, up, z),
        launch: (Math.atan2(up, Math.hypot(x, z)) * 180) / Math.PI,
        direction: (Math.atan2(z, x) * 180) / Math.PI,
        spin: 0,
      },
      AIR,
      { model, tolerance: 1e-9 },
    ),
  );
  const blown = figure(flyBall(strike, AIR, { model, wind, tolerance: 1e-9 }));
  expect(blown.time).toBeCloseTo(still.time, 6);
  expect(blown.carry).toBeCloseTo(still.carry + wind.along * still.time, 5);
  expect(blown.offline).toBeCloseTo(still.offline + wind.across * still.time, 5);
  expect(blown.height).toBeCloseTo(still.height, 6);
});

test("the path for drawing follows the same steps at any number of points, and asks for 2 to 1000", () => {
  const strike = { speed: 40, launch: 30, spin: 0, direction: 20 };
  const empty = { density: 0, viscosity: 1.8e-5 };
  // Source: without air x = v cos t, y = v sin t - g t^2 / 2.
  for (const { time, x, y, z } of figure(flightPath(strike, empty, { ground: 5 }, 7.9))) {
    const level = 40 * Math.cos(Math.PI / 6) * time;
    expect(x).toBeCloseTo(level * Math.cos(Math.PI / 9), 6);
    expect(z).toBeCloseTo(level * Math.sin(Math.PI / 9), 6);
    expect(y).toBeCloseTo(20 * time - (9.80665 * time * time) / 2, 6);
  }
  expect(figure(flightPath(strike, empty, { ground: 5 }, 7.9))).toHaveLength(7);
  expect(figure(flightPath(strike, empty, { ground: 5 }, 7)).at(-1)!.y).toBeCloseTo(5, 6);
  expect(figure(flightPath(strike, empty, {}, 2))).toHaveLength(2);
  expect(figure(flightPath(strike, empty))).toHaveLength(60);
  expect(flightPath(strike, empty, {}, 1)).toMatchObject({ message: "points should be 2 to 1000, not 1" });
});

test("a ball that hardly leaves the ground lands flat where it starts", () => {
  const flat = figure(flyBall({ speed: 21.9, launch: 1.4e-210, spin: 0 }, airOfDensity(0.8)));
  expect(flat.carry).toBeCloseTo(0, 6);
  expect(flat.landingAngle).toBeGreaterThanOrEqual(0);
  expect(flat.landingAngle).toBeCloseTo(0, 6);
});

import { expect, test } from "vitest";
import { AREA_OVER_TWO_MASSES } from "../../../src/flight/ball/ball.ts";
import { BEARMAN_HARVEY } from "../../../src/flight/ball/bearman-harvey.ts";
import { type CoefficientModel, POINT } from "../../../src/flight/ball/coefficient-model.ts";
import { constantCoefficients } from "../../../src/flight/ball/constant-coefficients.ts";
import { DormandPrinceStep } from "../../../src/flight/trajectory/dormand-prince.ts";
import { flyBall } from "../../../src/flight/trajectory/fly-ball.ts";
import { Forces } from "../../../src/flight/trajectory/forces.ts";
import { integrate } from "../../../src/flight/trajectory/integrate.ts";
import { KNOT, Knots, STRIDE } from "../../../src/flight/trajectory/knots.ts";
import { figure } from "../expect-figure.ts";

const SEA = { density: 1.225, viscosity: 1.7894e-5 };

test("without gravity a ball of constant drag and lift flies the exact spiral", () => {
  // Source: closed form, arc = ln(1 + kD v t) / kD, heading = launch + kL arc, integrated to 16 digits.
  const forces = new Forces();
  forces.model = constantCoefficients(0.25, 0.15);
  forces.setAir(SEA.density, SEA.viscosity, 1, 1);
  const launch = (12 * Math.PI) / 180;
  const knots = new Knots();
  const start = Float64Array.of(70 * Math.cos(launch), 70 * Math.sin(launch), 0, 3000);
  expect(integrate(forces, start, 0, 3, 1e-9, knots)).toBe("tooLong");
  const last = (knots.count - 1) * STRIDE;
  const [vx, vy] = [knots.data[last + KNOT.vx]!, knots.data[last + KNOT.vy]!];
  expect(knots.data[last]).toBeCloseTo(3, 12);
  expect(Math.abs(knots.data[last + KNOT.x]! - 132.05345063526406)).toBeLessThan(1e-6);
  expect(Math.abs(knots.data[last + KNOT.y]! - 58.58505491906664)).toBeLessThan(1e-6);
  expect(Math.abs(Math.hypot(vx, vy) - 34.97968644251418)).toBeLessThan(1e-6);
  expect(Math.abs((Math.atan2(vy, vx) * 180) / Math.PI - 35.84860285635807)).toBeLessThan(1e-6);
});

/** Drag that grows with speed, not its square: acceleration -k v. */
function linearDrag(k: number, density: number): CoefficientModel {
  return {
    name: "linear drag",
    source: "given",
    coefficients(point) {
      point[POINT.drag] = k / (AREA_OVER_TWO_MASSES * density * point[POINT.speed]!);
      point[POINT.lift] = 0;
    },
    measured: () => true,
  };
}

test("a ball of linear drag lands where the exact solution does", () => {
  // Source: closed form by the Lambert W function, t = (q + W(-q exp(-q))) / k with q = 1 + k vy / g.
  const strike = { speed: 61.2, launch: 12, spin: 0 };
  const flight = figure(flyBall(strike, SEA, { model: linearDrag(0.25, SEA.density), tolerance: 1e-9 }));
  expect(Math.abs(flight.carry - 106.83547421326551)).toBeLessThan(1e-6);
  expect(Math.abs(flight.time - 2.3635848682047524)).toBeLessThan(1e-6);
});

test("without air a ball flies the parabola of the textbook, also to a raised green", () => {
  // Source: range = v^2 sin(2 launch) / g; height = (v sin launch)^2 / 2 g.
  const empty = { density: 0, viscosity: 1.8e-5 };
  const strike = { speed: 40, launch: 45, spin: 3000, direction: 30 };
  const flat = figure(flyBall(strike, empty));
  const range = 40 ** 2 / 9.80665;
  expect(flat.carry).toBeCloseTo(range * Math.cos(Math.PI / 6), 8);
  expect(flat.offline).toBeCloseTo(range / 2, 8);
  expect(flat.height).toBeCloseTo(range / 4, 8);
  expect(flat.landingAngle).toBeCloseTo(45, 8);
  const raised = figure(flyBall(strike, empty, { ground: 10 }));
  const fall = Math.sqrt((2 * (range / 4 - 10)) / 9.80665);
  expect(raised.time).toBeCloseTo(flat.time / 2 + fall, 8);
});

test("steps too long for the spin never make a flight of nothing", () => {
  // Nothing but gravity acts, so that steps grow to where a trial step would turn the spin backwards.
  for (const tolerance of [1e-9, 1e-5, 1e-1, 10]) {
    const empty = { density: 0, viscosity: 1.8e-5 };
    const flight = figure(flyBall({ speed: 100, launch: 80, spin: 1500 }, empty, { tolerance, decay: 2e-3 }));
    expect(flight.carry).toBeCloseTo((100 ** 2 * Math.sin((160 * Math.PI) / 180)) / 9.80665, 6);
    expect(flight.landingSpin).toBeGreaterThanOrEqual(0);
    expect(flight.landingSpin).toBeLessThan(1);
  }
});

test("no step errs by more than the tolerance, and few by much less", () => {
  // The table's straight lines have kinks, at which steps are refused and tried again.
  const forces = new Forces();
  forces.model = BEARMAN_HARVEY;
  forces.gravity = 9.80665;
  forces.setAir(SEA.density, SEA.viscosity, 1, 1);
  const knots = new Knots();
  for (const tolerance of [1e-3, 2e-5, 1e-8]) {
    expect(integrate(forces, Float64Array.of(70, 14, 0, 2900), 0, 60, tolerance, knots)).toBe("landed");
    const again = new Float64Array(2 * STRIDE);
    const errors = Array.from({ length: knots.count - 1 }, (_, i) => {
      again.set(knots.data.subarray(i * STRIDE, (i + 1) * STRIDE));
      const h = knots.data[(i + 1) * STRIDE]! - knots.data[i * STRIDE]!;
      return new DormandPrinceStep().take(forces, again, 0, h) / tolerance;
    });
    expect(Math.max(...errors)).toBeLessThanOrEqual(1.000001);
    expect(errors.filter((one) => one > 0.05).length).toBeGreaterThan(errors.length / 2);
  }
});

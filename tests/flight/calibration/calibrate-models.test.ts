import { expect, test } from "vitest";
import { airAt } from "../../../src/flight/air/air-at.ts";
import type { CoefficientModel } from "../../../src/flight/ball/coefficient-model.ts";
import { EXTENDED_BEARMAN_HARVEY } from "../../../src/flight/ball/extended-bearman-harvey.ts";
import { SMITS_SMITH } from "../../../src/flight/ball/smits-smith.ts";
import { calibrate } from "../../../src/flight/calibration/calibrate.ts";
import { calibrateModels } from "../../../src/flight/calibration/calibrate-models.ts";
import { flyBall } from "../../../src/flight/trajectory/fly-ball.ts";
import { normalizeCarry, REFERENCE_AIR } from "../../../src/flight/uses/normalize-carry.ts";
import { seededRandom } from "../../../src/stats/seeded-random.ts";
import { figure } from "../expect-figure.ts";

const THIN = figure(airAt(1600));

const IRON = { speed: 45, launch: 18, spin: 6500 };
const DRIVER = { speed: 70, launch: 12, spin: 2600 };

/** A session hit at 1,600 m, its flights by the given published coefficients; scatter as monitors have it, or none. */
function session(truth: CoefficientModel, scatter: number, size = 24, club = IRON) {
  const random = seededRandom(7);
  return Array.from({ length: size }, (_, i) => {
    const strike = {
      speed: club.speed + Math.sin(i * 5),
      launch: club.launch + Math.cos(i * 2),
      spin: club.spin * (1 + 0.05 * Math.sin(i * 3)),
    };
    const flight = figure(flyBall(strike, THIN, { model: truth }));
    return {
      strike,
      carry: flight.carry + 1.5 * scatter * random.normal(),
      height: flight.height + scatter * random.normal(),
      landingAngle: flight.landingAngle + scatter * random.normal(),
      thick: figure(flyBall(strike, REFERENCE_AIR, { model: truth })).carry,
    };
  });
}

test("calibrateModels(shots, air) takes the published model whose shape the flights have", () => {
  for (const model of [EXTENDED_BEARMAN_HARVEY, SMITS_SMITH]) {
    expect(figure(calibrateModels(session(model, 0, 8), THIN)).model).toBe(model);
    expect(figure(calibrateModels(session(model, 1, 24, DRIVER), THIN)).model).toBe(model);
  }
});

test("calibrateModels keeps to the first model where three scattered shots cannot tell", () => {
  const shots = session(SMITS_SMITH, 1, 3);
  const found = figure(calibrateModels(shots, THIN));
  expect(found.model).toBe(EXTENDED_BEARMAN_HARVEY);
  expect(found).toEqual({ ...figure(calibrate(shots, THIN)), model: EXTENDED_BEARMAN_HARVEY });
});

test("calibrateModels takes the other model only where it is both 20 times as likely and 5 percent nearer", () => {
  const cases = [
    // Some 15 % nearer, but by 9 figures: exp(9 ln 1.15) = 3.4 times as likely.
    { size: 3, scatter: 0.7, club: DRIVER, likely: false, near: true, model: EXTENDED_BEARMAN_HARVEY },
    // Far more likely by 180 figures, but less than 5 % nearer.
    { size: 60, scatter: 1, club: IRON, likely: true, near: false, model: EXTENDED_BEARMAN_HARVEY },
    { size: 24, scatter: 0.7, club: IRON, likely: true, near: true, model: SMITS_SMITH },
  ];
  for (const { size, scatter, club, likely, near, model } of cases) {
    const shots = session(SMITS_SMITH, scatter, size, club);
    const [first, second] = [
      figure(calibrate(shots, THIN)),
      figure(calibrate(shots, THIN, { model: SMITS_SMITH })),
    ];
    const nearer = first.residual / second.residual;
    expect(nearer > 1.05).toBe(near);
    expect(nearer ** (3 * size) > Math.exp(3)).toBe(likely);
    expect(figure(calibrateModels(shots, THIN)).model).toBe(model);
  }
});

test("a 150 yd iron's carries go from 1,600 m to sea level within 1 yd, whichever published model is the truth", () => {
  for (const truth of [EXTENDED_BEARMAN_HARVEY, SMITS_SMITH]) {
    const shots = session(truth, 0, 8);
    const { model, factors } = figure(calibrateModels(shots, THIN));
    for (const { carry, strike, thick } of shots) {
      const corrected = figure(normalizeCarry(carry, strike, THIN, REFERENCE_AIR, { model, factors }));
      expect(Math.abs(corrected - thick)).toBeLessThan(0.9144);
      expect(Math.abs(carry - thick)).toBeGreaterThan(5 * 0.9144);
    }
  }
});

test("calibrateModels says what is lacking, as calibrate does", () => {
  expect(calibrateModels([], THIN)).toEqual(calibrate([], THIN));
});

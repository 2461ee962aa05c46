import { describe, expect, test } from "vitest";
import { BEARMAN_HARVEY } from "../../../src/flight/ball/bearman-harvey.ts";
import { constantCoefficients } from "../../../src/flight/ball/constant-coefficients.ts";
import { SMITS_SMITH } from "../../../src/flight/ball/smits-smith.ts";
import { flyBall } from "../../../src/flight/trajectory/fly-ball.ts";
import { runAfterLanding } from "../../../src/flight/uses/run-after-landing.ts";
import { figure } from "../expect-figure.ts";

// Source: an eighth-order adaptive integrator (Python) at a relative tolerance of 1e-11 over the published coefficients.
const SEA = { density: 1.225, viscosity: 1.789380278077583e-5 };
const KILOMETRE = { density: 1.11166, viscosity: 1.7579e-5 };
const TEST_RANGE = { density: 1.18531208, viscosity: 1.8319559437461026e-5 };
const DRIVE = { speed: 70, launch: 10, spin: 2700 };
const ODS_2004 = { speed: 78.67904, launch: 10, spin: 2520 };
const ODS_2028 = { speed: 81.80832, launch: 11, spin: 2220 };
const none = { decay: 0 };
/** Straight lines between the figures of a table need shorter steps than the default takes. */
const kinked = { tolerance: 1e-6 };

// biome-ignore format: a case a line
const CASES = [
  // strike, air, options, then carry, offline, height (m), time (s), landing angle, landing speed, landing spin
  ["drag alone", { speed: 70, launch: 12, spin: 0 }, SEA, { model: constantCoefficients(0.25, 0), ...none },
    [128.6036215, 0, 8.37301479, 2.600354464, 17.71040106, 38.66275699, 0]],
  ["drag and lift", { speed: 70, launch: 12, spin: 3000 }, SEA, { model: constantCoefficients(0.25, 0.15), ...none },
    [208.043879, 0, 23.18829633, 5.495583837, 33.86318895, 29.73493935, 3000]],
  ["Smits-Smith, spin kept", DRIVE, SEA, { model: SMITS_SMITH, ...none },
    [213.4179094, 0, 27.50043111, 6.566383778, 37.57836363, 27.11316219, 2700]],
  ["Smits-Smith", DRIVE, SEA, { model: SMITS_SMITH },
    [211.587305, 0, 26.80707876, 6.42092028, 37.29766598, 27.38307893, 2195.447689]],
  ["Smits-Smith, axis 10 right", { ...DRIVE, axis: 10 }, SEA, { model: SMITS_SMITH },
    [209.3935487, 18.14379865, 26.17845677, 6.342616052, 36.765255, 27.37603085, 2198.517933]],
  ["Smits-Smith, headwind", DRIVE, SEA, { model: SMITS_SMITH, wind: { along: -5, across: 0 } },
    [191.7887101, 0, 29.79845321, 6.759355369, 46.39040173, 24.0612669, 2163.821873]],
  ["Smits-Smith at 1,000 m", DRIVE, KILOMETRE, { model: SMITS_SMITH },
    [220.9787024, 0, 25.66602703, 6.323785175, 34.80984598, 28.6022944, 2178.396657]],
  ["wind-tunnel table, spin kept", { ...DRIVE, spin: 3000 }, SEA, { model: BEARMAN_HARVEY, ...none, ...kinked },
    [221.0674709, 0, 25.66312374, 6.606209779, 38.03848281, 25.37580195, 3000]],
  ["Smits-Smith, distance test of 2004", ODS_2004, TEST_RANGE, { model: SMITS_SMITH },
    [241.6702178, 0, 33.53336204, 7.069174243, 40.05985236, 28.77991321, 1985.946177]],
  ["wind-tunnel table, distance test of 2004", ODS_2004, TEST_RANGE, { model: BEARMAN_HARVEY, ...kinked },
    [252.2880969, 0, 28.85969293, 6.755708895, 37.53808967, 28.43557018, 1971.945631]],
  ["Smits-Smith, distance test of 2028", ODS_2028, TEST_RANGE, { model: SMITS_SMITH },
    [250.2943215, 0, 36.9200992, 7.266314509, 41.56929516, 29.3978562, 1732.243588]],
  ["wind-tunnel table, distance test of 2028", ODS_2028, TEST_RANGE, { model: BEARMAN_HARVEY, ...kinked },
    [265.0534148, 0, 32.54547648, 7.048058307, 38.88491309, 28.95566507, 1713.626099]],
] as const;

describe.each(CASES)("%s", (_name, strike, air, options, expected) => {
  const [carry, offline, height, time, angle, speed, spin] = expected;

  test("lands within 0.01 m and 0.01 degree of the reference", () => {
    const flight = figure(flyBall(strike, air, options));
    expect(Math.abs(flight.carry - carry)).toBeLessThan(0.01);
    expect(Math.abs(flight.offline - offline)).toBeLessThan(0.01);
    expect(Math.abs(flight.height - height)).toBeLessThan(0.01);
    expect(Math.abs(flight.landingAngle - angle)).toBeLessThan(0.01);
    expect(Math.abs(flight.time - time)).toBeLessThan(0.001);
    expect(Math.abs(flight.landingSpeed - speed)).toBeLessThan(0.01);
    expect(Math.abs(flight.landingSpin - spin)).toBeLessThan(0.05);
  });
});

test("carry and run under the distance test conditions of the rules stay under the published limit", () => {
  // Source: The R&A and USGA, Overall Distance Standard: 317 yd with a tolerance of 3 yd, carry and roll.
  for (const strike of [ODS_2004, ODS_2028]) {
    for (const model of [SMITS_SMITH, BEARMAN_HARVEY, undefined]) {
      const flight = figure(flyBall(strike, TEST_RANGE, { model }));
      const run = figure(runAfterLanding(flight.landingSpeed, flight.landingAngle, flight.landingSpin));
      expect((flight.carry + run) / 0.9144).toBeLessThan(320);
      expect((flight.carry + run) / 0.9144).toBeGreaterThan(280);
    }
  }
});

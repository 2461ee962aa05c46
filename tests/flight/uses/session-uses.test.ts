import { expect, test } from "vitest";
import { airOfDensity } from "../../../src/flight/air/air.ts";
import { airAt } from "../../../src/flight/air/air-at.ts";
import { SMITS_SMITH } from "../../../src/flight/ball/smits-smith.ts";
import { flyBall } from "../../../src/flight/trajectory/fly-ball.ts";
import { atClubSpeed } from "../../../src/flight/uses/at-club-speed.ts";
import { fillFlight } from "../../../src/flight/uses/fill-flight.ts";
import { holdsGreen } from "../../../src/flight/uses/holds-green.ts";
import { loftChange } from "../../../src/flight/uses/loft-change.ts";
import { normalizeCarry, REFERENCE_AIR } from "../../../src/flight/uses/normalize-carry.ts";
import { normalizeTable } from "../../../src/flight/uses/normalize-table.ts";
import { runAfterLanding } from "../../../src/flight/uses/run-after-landing.ts";
import { strikeAdjustedCarry, usualSmash } from "../../../src/flight/uses/strike-adjusted-carry.ts";
import { figure } from "../expect-figure.ts";

const IRON = { speed: 52, launch: 17, spin: 6600 };
const SPEED_SHOT = { strike: IRON, clubSpeed: 38, carry: 145 };

test("filling keeps what was measured and marks what was computed", () => {
  const [whole, bare, wrong] = fillFlight(
    [
      { strike: IRON, carry: 140, height: 28, landingAngle: 47 },
      { strike: IRON, carry: 140, height: Number.NaN },
      { strike: { ...IRON, spin: -5 } },
    ],
    REFERENCE_AIR,
  );
  expect(whole).toMatchObject({ carry: 140, height: 28, landingAngle: 47, computed: [] });
  const flight = figure(flyBall(IRON, REFERENCE_AIR));
  expect(bare).toMatchObject({
    carry: 140,
    height: flight.height,
    landingAngle: flight.landingAngle,
    computed: ["height", "landingAngle"],
    outside: true,
  });
  expect(wrong).toMatchObject({ kind: "invalid", message: "spin should be 0 to 20000 rpm, not -5" });
});

test("normalising to the same air changes nothing, and there and back again neither", () => {
  const thin = figure(airAt(1600));
  expect(figure(normalizeCarry(150, IRON, thin, thin))).toBe(150);
  const thick = figure(normalizeCarry(150, IRON, thin));
  expect(thick).toBeLessThan(147);
  expect(figure(normalizeCarry(thick, IRON, REFERENCE_AIR, thin))).toBeCloseTo(150, 9);
  expect(normalizeCarry(-1, IRON, thin)).toMatchObject({ message: "carry should be 0 to 1000, not -1" });
});

test("thin-air carries of a 150 yd iron come back to thick air within 1 yd though another published model is the truth", () => {
  // Source of the truth: Smits and Smith 1994, flown in both airs; the correction uses the wind-tunnel table.
  const thin = figure(airAt(1600));
  for (let i = 0; i < 24; i += 1) {
    const strike = {
      speed: 45 + Math.sin(i * 5),
      launch: 18 + Math.cos(i * 2),
      spin: 6500 + 300 * Math.sin(i * 3),
    };
    const measured = figure(flyBall(strike, thin, { model: SMITS_SMITH })).carry;
    const truth = figure(flyBall(strike, REFERENCE_AIR, { model: SMITS_SMITH })).carry;
    const error = (figure(normalizeCarry(measured, strike, thin)) - truth) / 0.9144;
    expect(Math.abs(error)).toBeLessThan(1);
  }
});

test("a table is normalised in slices that report how far they are", () => {
  const thin = airOfDensity(1.05);
  const work = normalizeTable({
    size: 7,
    carry: [140, Number.NaN, 150, 160, 170, 180, 190],
    strike: () => IRON,
    air: thin,
    slice: 3,
  });
  expect(work.next()).toEqual({ done: false, value: 3 / 7 });
  expect(work.next()).toEqual({ done: false, value: 6 / 7 });
  const { done, value } = work.next();
  expect(done).toBe(true);
  const carries = value as Float64Array;
  expect(carries[1]).toBeNaN();
  expect(carries[3]).toBe(figure(normalizeCarry(160, IRON, thin)));
});

test("at another club speed ball speed and spin go along and the measured carry by ratio", () => {
  const faster = figure(atClubSpeed(SPEED_SHOT, 41.8, REFERENCE_AIR));
  expect(faster.strike.speed).toBeCloseTo(57.2, 9);
  expect(faster.strike.spin).toBeCloseTo(7260, 9);
  expect(faster.strike.launch).toBe(17);
  expect(faster.from).toBe("ratio");
  const modelled = figure(flyBall(faster.strike, REFERENCE_AIR)).carry;
  expect(faster.carry).toBeCloseTo((145 * modelled) / figure(flyBall(IRON, REFERENCE_AIR)).carry, 9);
  expect(figure(atClubSpeed(SPEED_SHOT, 38, REFERENCE_AIR)).carry).toBe(145);
  const { carry: _, ...unmeasured } = SPEED_SHOT;
  expect(figure(atClubSpeed(unmeasured, 41.8, REFERENCE_AIR))).toMatchObject({
    from: "model",
    carry: modelled,
  });
  expect(atClubSpeed({ ...SPEED_SHOT, clubSpeed: 4 }, 40, REFERENCE_AIR)).toMatchObject({
    message: "club speed should be 5 to 80 m/s, not 4",
  });
  expect(atClubSpeed(SPEED_SHOT, 81, REFERENCE_AIR)).toMatchObject({
    message: "common club speed should be 5 to 80 m/s, not 81",
  });
});

test("a poor strike is adjusted to the player's usual smash factor", () => {
  const shots = [1.3, 1.36, 1.37, 1.38, 1.4].map((smash) => ({
    strike: { ...IRON, speed: 38 * smash },
    clubSpeed: 38,
    carry: 140,
  }));
  expect(figure(usualSmash(shots))).toBeCloseTo(1.37, 12);
  expect(figure(usualSmash(shots, "best"))).toBeCloseTo(1.392, 12);
  const smash = figure(usualSmash(shots));
  expect(figure(strikeAdjustedCarry(shots[0]!, smash, REFERENCE_AIR)).carry).toBeGreaterThan(144);
  expect(figure(strikeAdjustedCarry(shots[2]!, smash, REFERENCE_AIR)).carry).toBeCloseTo(140, 9);
  expect(usualSmash(shots.slice(0, 2))).toMatchObject({ kind: "unavailable" });
});

test("a weaker loft launches higher by 60 to 90 percent of it, spins more, lands steeper and carries less", () => {
  const { change, after } = figure(loftChange({ strike: IRON, carry: 145 }, 2, REFERENCE_AIR));
  expect(change.dynamicLoft).toEqual({ value: 2, low: expect.closeTo(1.6, 9), high: 2 });
  expect(change.launch.low / 2).toBeGreaterThan(0.5);
  expect(change.launch.value / 2).toBeGreaterThan(0.7);
  expect(change.launch.high / 2).toBeLessThan(0.85);
  expect(change.spin.low).toBeGreaterThan(0);
  expect(change.landingAngle.low).toBeGreaterThan(0);
  expect(change.carry.high).toBeLessThan(0);
  for (const ranged of [...Object.values(change), ...Object.values(after)]) {
    expect(ranged.low).toBeLessThanOrEqual(ranged.value);
    expect(ranged.high).toBeGreaterThanOrEqual(ranged.value);
  }
});

test("no loft change changes nothing, and one that turns the face under the path has no answer", () => {
  const { change } = figure(loftChange({ strike: IRON }, 0, REFERENCE_AIR));
  for (const ranged of Object.values(change)) expect(ranged.value).toBeCloseTo(0, 9);
  const driver = { speed: 70, launch: 14, spin: 600 };
  expect(loftChange({ strike: driver }, -10, REFERENCE_AIR)).toMatchObject({ kind: "unavailable" });
  expect(loftChange({ strike: IRON }, 40, REFERENCE_AIR)).toMatchObject({ kind: "invalid" });
});

test("a green is held by a steep and spinning ball (common practice, no source)", () => {
  expect(figure(holdsGreen(48, 6500)).verdict).toBe("holds");
  expect(figure(holdsGreen(48, 3000)).verdict).toBe("may hold");
  expect(figure(holdsGreen(42, 6500)).verdict).toBe("may hold");
  expect(figure(holdsGreen(42, 3000)).verdict).toBe("runs on");
  expect(figure(holdsGreen(35, 6500)).verdict).toBe("runs on");
  expect(figure(holdsGreen(45, 4500)).verdict).toBe("holds");
  expect(figure(holdsGreen(40, 4500)).verdict).toBe("may hold");
  expect(holdsGreen(95, 3000)).toMatchObject({ kind: "invalid" });
});

test("a landing angle short of the limit is shown as short of it", () => {
  // The limits are common practice, no source; the figures are these very arguments.
  expect(figure(holdsGreen(44.8, 6500)).words).toContain("at 44.8 degrees and 6500 rpm");
  expect(figure(holdsGreen(44.97, 6500)).words).toContain("at 44.9 degrees");
  expect(figure(holdsGreen(48, 4499.8)).words).toContain("at 48.0 degrees and 4499 rpm");
  expect(figure(holdsGreen(45, 4500)).words).toContain("at 45.0 degrees and 4500 rpm");
});

test("a ball that only rolls stops where its speed is used up", () => {
  // Source: constant deceleration 5/7 x 0.131 g; 2 m/s along the ground.
  expect(figure(runAfterLanding(2, 0, 0))).toBeCloseTo(4 / (2 * (5 / 7) * 0.131 * 9.80665), 9);
  expect(figure(runAfterLanding(27, 35, 2000))).toBeGreaterThan(figure(runAfterLanding(22, 50, 7000)));
});

import { mean } from "simple-statistics";
import { describe, expect, test } from "vitest";
import { buildValues } from "../../src/fitting/build-values.ts";
import { comparisonJson } from "../../src/fitting/comparison-json.ts";
import { fillSession } from "../../src/fitting/fill-session.ts";
import { loftAnswers } from "../../src/fitting/loft-answers.ts";
import { meanFlight } from "../../src/fitting/mean-flight.ts";
import { normalizeSession } from "../../src/fitting/normalize-session.ts";
import { sameConditions } from "../../src/fitting/same-conditions.ts";
import { type Session, sessionOf } from "../../src/fitting/session.ts";
import { sessionAir } from "../../src/fitting/session-air.ts";
import { sessionFlight } from "../../src/fitting/session-flight.ts";
import { sessionShots } from "../../src/fitting/session-shots.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";
import { demoSession } from "../sheets/demo-session.ts";
import { simulatedFlights, without } from "./simulated-flights.ts";

const THIN = { altitude: 1600 };
const SWINGS = [
  { build: "95 g", clubSpeed: 78, smash: 1.33 },
  { build: "110 g", clubSpeed: 76, smash: 1.33 },
  { build: "120 g", clubSpeed: 74, smash: 1.33 },
] as const;

describe("the air of a session", () => {
  test("is standard air at sea level where it was not stated, and says so", () => {
    expect(answer(sessionAir(undefined))).toMatchObject({ density: 1.225, stated: false });
    expect(sessionFlight(demoSession()).notes.join()).toContain("Air not stated");
    expect(sessionFlight({ ...demoSession(), air: THIN }).notes.join()).not.toContain("Air not stated");
  });

  test("comes from altitude or from a weather reading", () => {
    // Source: ICAO Doc 7488, 1,000 m: 1.11166 kg/m3; CIPM-2007 at 20 degrees C, 1000 hPa, 50 %: 1.1835566.
    expect(answer(sessionAir({ altitude: 1000 })).density).toBeCloseTo(1.11166, 4);
    const weather = { temperature: 20, pressure: 1000, humidity: 50, altitude: 300 };
    expect(answer(sessionAir(weather)).density).toBeCloseTo(1.1835566, 5);
  });

  test("names what makes no sense", () => {
    expect(sessionAir({ humidity: 150 })).toMatchObject({
      message: expect.stringContaining("humidity is 150"),
    });
    expect(sessionAir({ pressure: 29.9 })).toMatchObject({
      message: expect.stringContaining("pressure is 29.9"),
    });
    expect(sessionFlight({ ...demoSession(), air: { pressure: Number.NaN } }).same).toEqual([]);
  });
});

test("shots are flown in SI units, and backspin with sidespin is spin with an axis", () => {
  const text =
    "Build,Ball Speed (mph),Launch Angle (deg),Backspin (rpm),Sidespin (rpm)\nA,100,20,4000,3000\nA,,20,4000,0";
  const [shot, ...rest] = sessionShots(sessionOf(answer(readShots(text))).table);
  expect(rest).toEqual([]);
  // Exact: 100 mph is 44.704 m/s; 3, 4 and 5 make a right triangle, whose angle is 36.8699 degrees.
  expect(shot!.strike).toMatchObject({ speed: 44.704, launch: 20, spin: 5000 });
  expect(shot!.strike.axis).toBeCloseTo(36.8699, 4);
});

describe("filling a session", () => {
  const whole = simulatedFlights(SWINGS, THIN);
  const carry = whole.table.values.get("carry")!;
  const gaps: Session = {
    ...whole,
    table: {
      ...whole.table,
      values: new Map(whole.table.values).set(
        "carry",
        carry.map((one, i) => (i % 3 === 0 ? Number.NaN : one)),
      ),
    },
  };

  test("computes only what is missing, lists it, and leaves the session as it was", () => {
    const { table, computed, notes } = fillSession(gaps);
    const marked = [...computed.get("carry")!].sort((a, b) => a - b);
    expect(marked).toEqual([0, 3, 6, 9, 12, 15, 18, 21]);
    expect([...computed.keys()]).toEqual(["carry"]);
    table.values.get("carry")!.forEach((filled, i) => {
      if (i % 3 === 0) expect(Math.abs(filled - carry[i]!)).toBeLessThan(1.5);
      else expect(filled).toBe(carry[i]);
    });
    expect(Number.isNaN(gaps.table.values.get("carry")![0]!)).toBe(true);
    expect(notes[0]).toContain("Carry of 8 of 24 shots was computed, not measured");
  });

  test("comes nearer to the truth with the factors of the session than without", () => {
    const error = (session: Session) => {
      const { table } = fillSession(session);
      return mean([0, 3, 6, 9].map((i) => Math.abs(table.values.get("carry")![i]! - carry[i]!)));
    };
    expect(error(gaps)).toBeLessThan(error(without(gaps, "height", "landingAngle")) / 2);
  });

  test("has nothing to do where nothing is missing or nothing can be flown", () => {
    expect(fillSession(whole)).toMatchObject({ table: whole.table, notes: [] });
    expect(fillSession(without(gaps, "spin")).computed.size).toBe(0);
  });
});

describe("builds in the same air, at the same speed", () => {
  test("come within 1 yd of what they would have carried at sea level, though the truth is another model", () => {
    const thin = simulatedFlights(SWINGS, THIN);
    const thick = simulatedFlights(SWINGS, {});
    for (const { build, measured, sameAir } of answer(sameConditions(thin))) {
      const truth = mean(buildValues(thick.table, build, "carry"));
      expect(Math.abs(sameAir - truth)).toBeLessThan(1);
      expect(measured! - truth).toBeGreaterThan(5);
    }
  });

  test("lie together when only the club speed told them apart", () => {
    const same = answer(sameConditions(simulatedFlights(SWINGS, THIN)));
    const spread = (of: (number | null)[]) => Math.max(...(of as number[])) - Math.min(...(of as number[]));
    expect(spread(same.map((one) => one.sameAir))).toBeGreaterThan(6);
    expect(spread(same.map((one) => one.sameAirSameSpeed))).toBeLessThan(0.7);
    expect(same[0]!.clubSpeed).toBeCloseTo(76, 0);
  });

  test("lie together when only the strike told them apart, once that is taken out", () => {
    const struck = SWINGS.map((swing, i) => ({ ...swing, clubSpeed: 76, smash: 1.3 + 0.02 * i }));
    const same = answer(sameConditions(simulatedFlights(struck, {})));
    const spread = (of: (number | null)[]) => Math.max(...(of as number[])) - Math.min(...(of as number[]));
    expect(spread(same.map((one) => one.sameAirSameSpeed))).toBeGreaterThan(4);
    expect(spread(same.map((one) => one.strikeAdjusted))).toBeLessThan(1.5);
  });

  test("do without what the table lacks", () => {
    const session = simulatedFlights(SWINGS, THIN);
    const noSpeed = answer(sameConditions(without(session, "clubSpeed")));
    expect(noSpeed.map((one) => [one.sameAirSameSpeed, one.strikeAdjusted, one.clubSpeed])).toEqual(
      SWINGS.map(() => [null, null, null]),
    );
    expect(answer(sameConditions(without(session, "spin")))).toEqual([]);
    const noCarry = answer(sameConditions(without(session, "carry")));
    expect(noCarry.map((one) => [one.measured, one.computed])).toEqual(SWINGS.map(() => [null, 8]));
  });
});

describe("what the flight model says of a session", () => {
  test("the mean flight ends at the mean carry and peaks at the mean height", () => {
    const session = demoSession();
    const { points } = answer(meanFlight(session, "105 g mid-launch"));
    // The means of the demo table itself: (162.6+164.8+162.6+164.5+162.2+159.5)/6 yd and (81+94+91+89+86+90)/6 ft.
    expect(points.at(-1)).toEqual({ ahead: expect.closeTo(162.7, 9), height: 0 });
    expect(Math.max(...points.map(({ height }) => height))).toBeCloseTo(88.5, 0);
    expect(points[0]).toEqual({ ahead: 0, height: 0 });
  });

  test("a weaker loft launches higher, spins more and comes down steeper and shorter, in words", () => {
    const { change, words } = answer(loftAnswers(demoSession(), "105 g mid-launch", 2));
    // Trade's rule of thumb for irons: launch takes the greater part of a loft change (common practice, no source).
    expect(change.launch!.value).toBeGreaterThan(1);
    expect(change.launch!.value).toBeLessThan(2);
    expect(change.landingAngle!.value).toBeGreaterThan(0);
    expect(change.carry!.high).toBeLessThan(0);
    expect(change.carry!.low).toBeLessThanOrEqual(change.carry!.value);
    expect(words[0]).toMatch(/^105 g mid-launch, 2 degrees weaker: launch angle 1\.\d degrees more/);
    expect(words[0]).toMatch(/carry \d+ yd less/);
    const metric = answer(loftAnswers({ ...demoSession(), units: "metric" }, "105 g mid-launch", -1));
    expect(metric.words[0]).toMatch(/1 degree stronger: .*carry \d+ m more/);
    expect(loftAnswers(demoSession(), "nobody's", 2)).toMatchObject({ kind: "unavailable" });
  });

  test("irons are told whether they hold a green, drivers are not", () => {
    const { green } = sessionFlight(demoSession());
    expect(green.map(({ verdict }) => verdict)).toEqual(["holds", "may hold", "may hold", "may hold"]);
    expect(green.every(({ computed }) => !computed)).toBe(true);
    expect(sessionFlight({ ...demoSession(), title: "Driver" }).green).toEqual([]);
  });

  test("the calibration is told with limits, and is left out where nothing can be flown", () => {
    const { calibration } = sessionFlight(simulatedFlights(SWINGS, THIN));
    for (const factor of [calibration!.drag, calibration!.lift]) {
      expect(factor.low).toBeLessThan(factor.value);
      expect(factor.high).toBeGreaterThan(factor.value);
    }
    expect(sessionFlight(without(demoSession(), "spin"))).toMatchObject({ same: [], calibration: null });
  });

  test("normalized carries and the calibration stand in --json, as plain data", () => {
    const session = simulatedFlights(SWINGS.slice(0, 2), THIN);
    const { normalized, calibration, notes } = comparisonJson(session);
    expect(normalized.map(({ build, metric }) => [build, metric])).toEqual([
      ["95 g", "carry"],
      ["110 g", "carry"],
    ]);
    expect(notes.join()).not.toContain("Air not stated");
    expect(JSON.parse(JSON.stringify(calibration))).toEqual(calibration);
  }, 30_000);
});

describe("normalising a long table", () => {
  test("tells how far it is, and answers as one shot alone would", () => {
    const session = simulatedFlights(SWINGS, THIN);
    const many = longTable(session, 2000);
    const shares: number[] = [];
    const work = normalizeSession(many, answer(sessionAir(many.air)));
    let turn = work.next();
    for (; !turn.done; turn = work.next()) shares.push(turn.value);
    expect(shares).toEqual([0.25, 0.5, 0.75, 1]);
    const [one] = answer(sameConditions(session));
    const first = Array.from(turn.value).slice(0, 8);
    expect(mean(first)).toBeCloseTo(one!.sameAir, 0);
  });
});

function longTable(session: ReturnType<typeof demoSession>, size: number) {
  const values = new Map(
    [...session.table.values].map(([key, column]) => [
      key,
      Float64Array.from({ length: size }, (_, i) => column[i % column.length]!),
    ]),
  );
  return { ...session, table: { ...session.table, size, values } };
}

import { expect, test } from "vitest";
import { compareBuilds } from "../../src/fitting/compare-builds.ts";
import { normalizeSession } from "../../src/fitting/normalize-session.ts";
import { type Session, sessionOf } from "../../src/fitting/session.ts";
import { sessionAir } from "../../src/fitting/session-air.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { evenly, meansByBuild } from "../../src/pane/build-means.ts";
import { emptyDraft } from "../../src/pane/draft.ts";
import { evenedCarries, STANDARD_AIR } from "../../src/pane/evened-carries.ts";
import { withEvery } from "../../src/pane/every-shot.tsx";
import { wordsOf } from "../../src/pane/judge.ts";
import { type LongAnswer, type LongStep, longWork } from "../../src/pane/long-work.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";
import { atOnce } from "../../src/slices/at-once.ts";
import { manyShots } from "../bench/many-shots.ts";

const { facts, builds, corrections } = emptyDraft("1");
const ORDER = { facts, builds, corrections, units: "us" } as const;

function worked(text: string, order: Parameters<typeof longWork>[1] = ORDER) {
  const work = longWork(text, order);
  const steps: LongStep[] = [];
  for (let turn = work.next(); ; turn = work.next()) {
    if (turn.done) return { steps, answer: turn.value };
    steps.push(turn.value);
  }
}
function table(text: string): ShotTable {
  const found = readShots(text);
  if (isProblem(found)) throw new Error(found.message);
  return found;
}
function everyShot(session: Session): Float64Array {
  const air = sessionAir(session.air);
  if (isProblem(air)) throw new Error(air.message);
  return atOnce(normalizeSession(session, air));
}
function answered(text: string, order?: Parameters<typeof longWork>[1]): LongAnswer {
  const { answer } = worked(text, order);
  if (isProblem(answer)) throw new Error(answer.message);
  return answer;
}

// Expected is what the same steps say of the same text in one go, whose own tests hold them to published figures.
test("a long table says what a short one says: figures, verdict and what was not understood", () => {
  const text = manyShots(3000).replace("\t165.", "\tfar.");
  const { steps, answer } = worked(text);
  if (isProblem(answer)) throw new Error(answer.message);
  const session = sessionOf(table(text), { units: "us" });
  expect(answer.comparison).toEqual(compareBuilds(session));
  const { headline, reasons } = wordsOf(session);
  expect(answer.verdict.slice(0, 1 + reasons.length)).toEqual([headline, ...reasons]);
  expect(answer).toMatchObject({ shots: 3000, counted: 3000, doubts: 1, standardAir: null });
  expect(answer.problems).toEqual(session.table.problems);
  const shares = steps.map(({ share }) => share);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
});

test("its sample has every build, evenly picked, and is a table by itself", () => {
  const text = manyShots(8000);
  const { sample, sampled } = answered(text);
  expect(sampled).toBe(300);
  const part = table(sample);
  expect(part.size).toBe(2400);
  // Every tenth shot of 1,000 a build would be 100; 300 of 1,000 have a mean within a few standard errors, 5 / sqrt(300) yd.
  const [whole, some] = [table(text), part].map((shots) =>
    compareBuilds(sessionOf(shots)).builds.map((build) => build.metrics.get("carry")!.mean),
  );
  some!.forEach((mean, place) => {
    expect(Math.abs(mean - whole![place]!)).toBeLessThan(1.2);
  });
  expect(evenly(part, 2).length).toBe(16);
});

test("with the air stated every shot is flown to standard air", () => {
  const text = manyShots(1200);
  const order = { ...ORDER, facts: { ...facts, air: { altitude: 1600 } } };
  const { standardAir } = answered(text, order);
  const session = sessionOf(table(text), { air: { altitude: 1600 } });
  const every = everyShot(session);
  expect(standardAir).toEqual(meansByBuild(session, every));
  for (const [place, { mean, shots }] of standardAir!.entries()) {
    expect(shots).toBe(150);
    // Thin air carries farther, so the same strike carries less at sea level.
    expect(mean!).toBeLessThan(answered(text).comparison.builds[place]!.metrics.get("carry")!.mean);
  }
});

test("means of every shot take the place of those of 300 a build, close by, and say so", () => {
  const session = sessionOf(table(manyShots(1000, 2)), { air: { altitude: 1600 } });
  const columns = evenedCarries(session, String);
  const every = everyShot(session);
  const [before, after] = [columns, withEvery(session, columns, every)].map(
    (list) => list.find(({ heading }) => heading === STANDARD_AIR)!,
  );
  expect(after!.meaning).toMatch(/Every shot was flown\.$/);
  after!.carries.forEach((carry, place) => {
    expect(Math.abs(carry! - before!.carries[place]!)).toBeLessThan(0.2);
  });
});

test("a column of single names is not taken for so many builds", () => {
  const rows = Array.from({ length: 300 }, (_, shot) => `shot ${shot}\t${150 + (shot % 7)}`);
  const { answer } = worked(`Build\tCarry\n${rows.join("\n")}`);
  expect(isProblem(answer) && answer.message).toMatch(/^The table names 300 builds, and at most 200/);
});

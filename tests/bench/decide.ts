import { CLEAR } from "../../src/fitting/decide.ts";
import { FIRST_SHOTS, nextBuild } from "../../src/fitting/next-build.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { chanceBest, seededRandom, sharedSpread } from "../../src/stats/index.ts";
import type { BenchLine } from "./run.ts";
import {
  groupsOf,
  type SimulatedSession,
  shotsAbout,
  simulatedSession,
  type Truth,
} from "./simulated-session.ts";

/**
 * How verdicts fare where the truth is known, and how many shots the sequential plan saves. Everything is seeded, so
 * the lines are the same on every run; `sessions` says how many were drawn.
 */
export async function* bench(): AsyncGenerator<BenchLine> {
  yield* calibration();
  yield* clearVerdicts();
  yield* fewerShots();
}

const SESSIONS = 8000;

/** The chances of a simulated session, as a fitting has them. */
function chancesOf(shots: readonly (readonly number[])[]): number[] {
  const chances = chanceBest(groupsOf(shots), "high", sharedSpread(shots).shared ? "pooled" : "separate");
  if (isProblem(chances)) throw new Error(chances.message);
  return chances;
}

function isRight(session: SimulatedSession, choice: number): boolean {
  return session.truth[choice] === Math.max(...session.truth);
}

const highest = (list: readonly number[]) => list.indexOf(Math.max(...list));

/** Of verdicts that say some chance, the share that is right: by tens, and about 90 in 100 (85 to 95). */
async function* calibration(): AsyncGenerator<BenchLine> {
  const random = seededRandom(2026);
  const bins = [50, 60, 70, 80, 85, 95, 100].map((to) => ({ to, count: 0, said: 0, right: 0 }));
  for (let s = 0; s < SESSIONS; s++) {
    const session = simulatedSession(random, "supposed");
    const chances = chancesOf(session.shots);
    const best = highest(chances);
    const bin = bins.find(({ to }) => 100 * chances[best]! <= to)!;
    bin.count++;
    bin.said += chances[best]!;
    if (isRight(session, best)) bin.right++;
  }
  for (const [i, { to, count, said, right }] of bins.entries()) {
    const from = bins[i - 1]?.to ?? 0;
    const share = right / count;
    yield {
      what: "of verdicts with this chance, the share that is right",
      chance: `${from} to ${to} %`,
      said: round(said / count),
      right: round(share),
      error: round(Math.sqrt((share * (1 - share)) / count)),
      verdicts: count,
      ...(to === 95 ? { goal: "0.88 to 0.92", met: share >= 0.88 && share <= 0.92 } : {}),
    };
  }
}

const TRUTHS: readonly Truth[] = [
  "same",
  "supposed",
  "quarter steps",
  "half steps",
  "whole steps",
  "one ahead",
];

/** How often "clear" comes, and how often it is wrong, when the truth is as supposed and when it is not. */
async function* clearVerdicts(): AsyncGenerator<BenchLine> {
  for (const truth of TRUTHS) {
    const random = seededRandom(7);
    const count = 1500;
    let clear = 0;
    let wrong = 0;
    for (let s = 0; s < count; s++) {
      const session = simulatedSession(random, truth);
      const chances = chancesOf(session.shots);
      const best = highest(chances);
      if (!isClear(session.shots, chances, best)) continue;
      clear++;
      if (!isRight(session, best)) wrong++;
    }
    yield truth === "same"
      ? {
          what: "clear verdicts with no true difference",
          share: round(clear / count),
          goal: "below 0.05",
          met: clear / count < 0.05,
          sessions: count,
        }
      : {
          what: `clear verdicts, true means: ${truth}`,
          share: round(clear / count),
          wrongOfClear: round(wrong / Math.max(1, clear)),
          wrongOfAll: round(wrong / count),
          ...(truth === "supposed" ? { goal: "wrong of clear below 0.05", met: wrong / clear < 0.05 } : {}),
          sessions: count,
        };
  }
}

/** The rule of decide.ts over bare lists: sure enough, and with three shots no overlap with any other. */
function isClear(shots: readonly (readonly number[])[], chances: readonly number[], best: number): boolean {
  const least = Math.min(...shots[best]!);
  const blurred = shots.some(
    (list, i) => i !== best && Math.min(list.length, shots[best]!.length) <= 3 && Math.max(...list) >= least,
  );
  return chances[best]! >= CLEAR && !blurred;
}

const SEQUENTIAL_SESSIONS = 300;
const BUILDS = 4;
/** A session ends after these many shots a build on average, clear or not. */
const MOST_EACH = 12;
/** Chances at which the sequential plan may stop: each gives a point of its curve; the last is what "clear" asks. */
const STOPS = [0.6, 0.7, 0.8, 0.9, CLEAR];

/**
 * The sequential plan (three shots each, then the build that NEXTBUILD names, until a build is sure enough or 12 a
 * build on average are hit) beside equal allocation in which the highest mean wins: shots for the same rate of right
 * choices, for each chance at which one may stop.
 */
async function* fewerShots(): AsyncGenerator<BenchLine> {
  for (const truth of ["supposed", "half steps", "one ahead"] as const) {
    const random = seededRandom(99);
    const sessions = Array.from({ length: SEQUENTIAL_SESSIONS }, () => fourBuilds(random, truth));
    const runs = sessions.map((session) => runSequential(session, random));
    const equal = equalCurve(truth);
    for (const [s, stop] of STOPS.entries()) {
      const shots = runs.reduce((sum, ends) => sum + ends[s]!.hit, 0) / runs.length;
      const rate = runs.filter((ends, r) => isRight(sessions[r]!, ends[s]!.choice)).length / runs.length;
      const same = shotsFor(rate, equal);
      yield {
        what: `shots for the same rate of right choices, four builds, true means: ${truth}`,
        stopAt: stop,
        rightRate: round(rate),
        sequentialShots: round(shots),
        equalShots: same === null ? `more than ${BUILDS * MOST_EQUAL}` : round(same),
        fewer: same === null ? null : round(1 - shots / same),
        sessions: runs.length,
        ...(stop === CLEAR ? { goal: "0.25 or more fewer", met: same === null || shots <= 0.75 * same } : {}),
      };
    }
  }
}

function fourBuilds(random: ReturnType<typeof seededRandom>, truth: Truth): SimulatedSession {
  for (;;) {
    const session = simulatedSession(random, truth);
    if (session.truth.length === BUILDS) return session;
  }
}

interface End {
  readonly hit: number;
  readonly choice: number;
}

/** Where a session would have ended for each of the chances at which one may stop. */
function runSequential(session: SimulatedSession, random: ReturnType<typeof seededRandom>): End[] {
  const shots = session.truth.map((centre) => shotsAbout(random, centre, session.sd, FIRST_SHOTS));
  const ends: End[] = [];
  for (let hit = BUILDS * FIRST_SHOTS; ; hit++) {
    const chances = chancesOf(shots);
    const choice = highest(chances);
    while (ends.length < STOPS.length && mayStop(shots, chances, choice, STOPS[ends.length]!))
      ends.push({ hit, choice });
    const next = nextBuild(groupsOf(shots), "high");
    if (ends.length === STOPS.length) return ends;
    if (hit >= BUILDS * MOST_EACH || isProblem(next)) {
      return STOPS.map((_, s) => ends[s] ?? { hit, choice });
    }
    shots[next]!.push(...shotsAbout(random, session.truth[next]!, session.sd, 1));
  }
}

function mayStop(
  shots: readonly (readonly number[])[],
  chances: readonly number[],
  best: number,
  stop: number,
) {
  return stop === CLEAR ? isClear(shots, chances, best) : chances[best]! >= stop;
}

const MOST_EQUAL = 60;

/** Rate of right choices by equal allocation and the highest mean, for 1, 2, 3 ... shots a build. */
function equalCurve(truth: Truth): number[] {
  const random = seededRandom(100);
  const sessions = Array.from({ length: 20_000 }, () => fourBuilds(random, truth));
  return Array.from({ length: MOST_EQUAL }, (_, i) => {
    // The mean of so many shots is one normal draw with the spread divided by the root of their number.
    const error = 1 / Math.sqrt(i + 1);
    const right = sessions.filter((session) => {
      const means = session.truth.map((centre) => centre + session.sd * error * random.normal());
      return isRight(session, highest(means));
    });
    return right.length / sessions.length;
  });
}

/** Total shots at which a curve first reaches a rate, between its points; null where it never does. */
function shotsFor(rate: number, curve: readonly number[]): number | null {
  const at = curve.findIndex((value) => value >= rate);
  if (at < 0) return null;
  const before = curve[at - 1] ?? 0;
  return BUILDS * (at + (rate - before) / (curve[at]! - before));
}

function round(value: number): number {
  return Number(value.toPrecision(3));
}

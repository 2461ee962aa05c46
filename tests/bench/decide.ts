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

const SESSIONS = 6000;

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

/** Of verdicts that say some chance, the share that is right: by tens, and about 90 in 100. */
async function* calibration(): AsyncGenerator<BenchLine> {
  const random = seededRandom(2026);
  const bins = [50, 60, 70, 80, 87.5, 92.5, 100].map((to) => ({ to, count: 0, said: 0, right: 0 }));
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
      ...(to === 92.5 ? { goal: "0.88 to 0.92", met: share >= 0.88 && share <= 0.92 } : {}),
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

/** The rule of decide.ts over bare lists: sure enough, and with three shots no overlap. */
function isClear(shots: readonly (readonly number[])[], chances: readonly number[], best: number): boolean {
  if (chances[best]! < CLEAR) return false;
  const other = highest(chances.map((chance, i) => (i === best ? -1 : chance)));
  const few = Math.min(shots[best]!.length, shots[other]!.length) <= 3;
  return !few || Math.min(...shots[best]!) > Math.max(...shots[other]!);
}

const SEQUENTIAL_SESSIONS = 300;
const MOST_EACH = 20;
const BUILDS = 4;

/**
 * The sequential plan (three shots each, then the build that NEXTBUILD names, until the choice is clear or 20 a build
 * on average are hit) beside equal allocation in which the highest mean wins: shots for the same rate of right choices.
 */
async function* fewerShots(): AsyncGenerator<BenchLine> {
  for (const truth of ["supposed", "one ahead", "half steps"] as const) {
    const random = seededRandom(99);
    const sessions = Array.from({ length: SEQUENTIAL_SESSIONS }, () => fourBuilds(random, truth));
    let shots = 0;
    let right = 0;
    for (const session of sessions) {
      const { hit, choice } = runSequential(session, random);
      shots += hit;
      if (isRight(session, choice)) right++;
    }
    const rate = right / sessions.length;
    const equal = equalShotsFor(rate, truth);
    const mean = shots / sessions.length;
    yield {
      what: `shots for the same rate of right choices, four builds, true means: ${truth}`,
      rightRate: round(rate),
      sequentialShots: round(mean),
      equalShots: equal === null ? `more than ${BUILDS * 60}` : round(equal),
      fewer: equal === null ? `more than ${round(1 - mean / (BUILDS * 60))}` : round(1 - mean / equal),
      goal: "0.25 or more",
      met: equal === null || mean <= 0.75 * equal,
      sessions: sessions.length,
    };
  }
}

function fourBuilds(random: ReturnType<typeof seededRandom>, truth: Truth): SimulatedSession {
  for (;;) {
    const session = simulatedSession(random, truth);
    if (session.truth.length === BUILDS) return session;
  }
}

function runSequential(session: SimulatedSession, random: ReturnType<typeof seededRandom>) {
  const shots = session.truth.map((centre) => shotsAbout(random, centre, session.sd, FIRST_SHOTS));
  let hit = BUILDS * FIRST_SHOTS;
  for (;;) {
    const chances = chancesOf(shots);
    const best = highest(chances);
    if (isClear(shots, chances, best) || hit >= BUILDS * MOST_EACH) return { hit, choice: best };
    const next = nextBuild(groupsOf(shots), "high");
    if (isProblem(next)) return { hit, choice: best };
    shots[next]!.push(...shotsAbout(random, session.truth[next]!, session.sd, 1));
    hit++;
  }
}

/** Total shots at which equal allocation reaches a rate of right choices; null beyond 60 a build. */
function equalShotsFor(rate: number, truth: Truth): number | null {
  const random = seededRandom(100);
  const count = 6000;
  const sessions = Array.from({ length: count }, () => fourBuilds(random, truth));
  let before = 0;
  for (let each = 1; each <= 60; each++) {
    let right = 0;
    for (const session of sessions) {
      // The mean of `each` shots is one normal draw with the spread divided by the root of their number.
      const means = session.truth.map((centre) => centre + (session.sd / Math.sqrt(each)) * random.normal());
      if (isRight(session, highest(means))) right++;
    }
    const now = right / count;
    if (now >= rate) return BUILDS * (each - (now === before ? 0 : (now - rate) / (now - before)));
    before = now;
  }
  return null;
}

function round(value: number): number {
  return Number(value.toPrecision(3));
}

import { type Comparison, compareBuilds } from "../fitting/compare-builds.ts";
import { normalizeSession } from "../fitting/normalize-session.ts";
import { buildNames, type Session } from "../fitting/session.ts";
import { sessionAir } from "../fitting/session-air.ts";
import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import type { MetricKey } from "../shots/metrics.ts";
import { readInSlices } from "../shots/read-in-slices.ts";
import type { TableProblem } from "../shots/shot-table.ts";
import { shotsText } from "../shots/shots-text.ts";
import { evenly, type MeanCarry, meansByBuild } from "./build-means.ts";
import { toSession } from "./derive.ts";
import type { Draft } from "./draft.ts";
import { choiceOf, wordsOf } from "./judge.ts";
import { readOptions } from "./reading-options.ts";

/** What a long table is to be read with: all of the open session but its text. */
export interface LongOrder {
  readonly corrections: Draft["corrections"];
  readonly facts: Draft["facts"];
  readonly builds: Draft["builds"];
  readonly units: Session["units"];
}

/** How far the work is. */
export interface LongStep {
  readonly doing: string;
  /** From 0 to 1, of the whole. */
  readonly share: number;
}

/** What a long table came to: small, whatever its length, for it has to be handed over to the page. */
export interface LongAnswer {
  readonly shots: number;
  readonly counted: number;
  readonly builds: readonly string[];
  readonly metrics: readonly MetricKey[];
  readonly comparison: Comparison;
  /** Sentences of the verdict, the headline first. */
  readonly verdict: readonly string[];
  /** Mean carries of all shots in standard air; null where the air was not stated. */
  readonly standardAir: readonly MeanCarry[] | null;
  /** How many cells were not understood, and the first of them. */
  readonly doubts: number;
  readonly problems: readonly TableProblem[];
  readonly skipped: number;
  readonly notes: readonly string[];
  /** Some shots of each build, evenly picked, as a table of their own; and how many of each at most. */
  readonly sample: string;
  readonly sampled: number;
}

const PROBLEMS_TOLD = 20;
/** More names than any shop has builds: then another column was taken for them. */
const MOST_BUILDS = 200;
/** Shots of a build in the sample, fewer where there are many builds: what a session shows at once. */
const SAMPLE = { aBuild: 300, all: 3000 };

/**
 * Reads a long table and works out what it says, telling how far it is after some milliseconds each, save where a step
 * cannot be cut: putting a million shots side by side takes a second or two.
 */
export function* longWork(text: string, order: LongOrder): Generator<LongStep, Outcome<LongAnswer>> {
  const { corrections, facts, builds, units } = order;
  const reading = readInSlices(text, readOptions(corrections, facts.leftHanded));
  let turn = reading.next();
  for (; !turn.done; turn = reading.next()) yield { doing: "Reading the table", share: 0.5 * turn.value };
  const table = turn.value;
  if (isProblem(table)) return table;
  yield { doing: "Putting builds side by side", share: 0.5 };
  const named = buildNames(table).length;
  if (named > MOST_BUILDS) {
    return unavailable(
      `The table names ${named} builds, and at most ${MOST_BUILDS} can be put side by side. Look at which column names them.`,
    );
  }
  const session = toSession(table, builds, facts, units, ".");
  yield { doing: "Putting builds side by side", share: 0.55 };
  const comparison = compareBuilds(session);
  yield { doing: "Working out the verdict", share: 0.6 };
  choiceOf(session);
  yield { doing: "Working out the verdict", share: 0.7 };
  const { headline, reasons, costs, next } = wordsOf(session);
  const air = sessionAir(session.air);
  let standardAir: LongAnswer["standardAir"] = null;
  if (!isProblem(air) && air.stated) {
    const flying = normalizeSession(session, air);
    let flown = flying.next();
    for (; !flown.done; flown = flying.next()) {
      yield { doing: "Flying every shot in standard air", share: 0.75 + 0.25 * flown.value };
    }
    standardAir = meansByBuild(session, flown.value);
  }
  const names = session.builds.map(({ name }) => name);
  const sampled = Math.max(1, Math.min(SAMPLE.aBuild, Math.floor(SAMPLE.all / names.length)));
  return {
    shots: table.size,
    counted: table.keep.reduce((sum, keep) => sum + Number(keep), 0),
    builds: names,
    metrics: [...table.values.keys()],
    comparison,
    verdict: [headline, ...reasons, ...costs, next].filter((sentence) => sentence !== ""),
    standardAir,
    doubts: table.problems.length,
    problems: table.problems.slice(0, PROBLEMS_TOLD),
    skipped: table.skipped.length,
    notes: table.notes,
    sample: shotsText(table, evenly(table, sampled)),
    sampled,
  };
}

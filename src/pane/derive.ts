import { type BuildSpec, specFromName } from "../fitting/build-spec.ts";
import { buildNames, type Session, sessionOf } from "../fitting/session.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import { readShots } from "../shots/read-shots.ts";
import { proposeOutliers } from "../shots/screening.ts";
import type { ShotTable } from "../shots/shot-table.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import { calledNow } from "./called-now.ts";
import type { BuildDetails, Draft } from "./draft.ts";
import { lastAnswer } from "./last-answer.ts";
import { readOptions } from "./reading-options.ts";
import { withBuildNames } from "./with-build-names.ts";
import { withOwnWindows } from "./with-own-windows.ts";
import { withTicks } from "./with-ticks.ts";

/** Everything that follows from a session's draft. */
export interface Derived {
  /** As read, before ticks and new names. */
  readonly table: ShotTable;
  readonly session: Session;
  /** Shots far from the rest of their build, proposed for a second look; ticks by hand do not move them. */
  readonly far: ReturnType<typeof proposeOutliers>;
}

const read = lastAnswer((text: string, corrections: Draft["corrections"], leftHanded: boolean) =>
  readShots(text, readOptions(corrections, leftHanded)),
);
const tick = lastAnswer(withTicks);
const rename = lastAnswer(withBuildNames);
const sit = lastAnswer(toSession);
const screen = lastAnswer(proposeOutliers);
const gather = lastAnswer(
  (table: ShotTable, session: Session, far: Derived["far"]): Derived => ({ table, session, far }),
);
const compute = lastAnswer((session: Session, fill: Fill) => fill(session));

/** Computes what a session's table lacks: `filledSession`, handed in by those who have fetched the flight model. */
export type Fill = (session: Session) => Session;

/**
 * Works out what a draft says; null while it has no text. Steps whose input has not changed keep their last answer.
 *
 * @param fill taken only where the draft asks for it
 * @param decimalMark what sentences on sheets are to write
 */
export function derive(
  draft: Draft,
  units: UnitSet,
  fill: Fill | null = null,
  decimalMark = ".",
): Outcome<Derived> | null {
  if (draft.text.trim() === "") return null;
  const table = read(draft.text, draft.corrections, draft.facts.leftHanded);
  if (isProblem(table)) return table;
  const named = rename(table, draft.builds);
  const measured = sit(tick(named, draft.ticks), draft.builds, draft.facts, units, decimalMark);
  const session = draft.facts.fill && fill ? compute(measured, fill) : measured;
  return gather(table, session, screen(named, undefined, units));
}

/** A session over a table, with what was said about it. */
export function toSession(
  table: ShotTable,
  builds: Draft["builds"],
  facts: Draft["facts"],
  units: UnitSet,
  decimalMark: string,
): Session {
  const told = new Map(
    Object.entries(builds).map(([was, details]) => [
      calledNow(was, builds),
      { ...specFromName(was), ...withoutNulls(details) },
    ]),
  );
  const specs = buildNames(table).map((name) => ({ ...specFromName(name), ...told.get(name), name }));
  const { windows, air, fill: _, ...plain } = facts;
  const session = sessionOf(table, {
    ...plain,
    ...(Object.keys(air).length > 0 ? { air } : {}),
    ...{ baseline: calledNow(facts.baseline, builds), builds: specs, units, decimalMark },
  });
  return { ...session, windows: withOwnWindows(session.windows, windows) };
}

/** What was taken out by hand is not known, whatever a name says. */
function withoutNulls(details: BuildDetails): Partial<BuildSpec> {
  const told = Object.entries(details).map(([key, value]) => [key, value ?? undefined]);
  return Object.fromEntries(told) as Partial<BuildSpec>;
}

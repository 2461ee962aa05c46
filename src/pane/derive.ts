import { specFromName } from "../fitting/build-spec.ts";
import { type Comparison, compareBuilds } from "../fitting/compare-builds.ts";
import { buildNames, type Session, sessionOf } from "../fitting/session.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import { readShots } from "../shots/read-shots.ts";
import type { ShotTable } from "../shots/shot-table.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import type { Draft } from "./draft.ts";
import { lastAnswer } from "./last-answer.ts";
import { withBuildNames } from "./with-build-names.ts";
import { withTicks } from "./with-ticks.ts";

/** Everything that follows from a session's draft, or why nothing does. */
export interface Derived {
  /** As read, before ticks. */
  readonly table: ShotTable;
  readonly session: Session;
  readonly comparison: Comparison;
}

const read = lastAnswer(
  (text: string, corrections: Draft["corrections"]): Outcome<ShotTable> =>
    readShots(text, { columns: corrections }),
);
const tick = lastAnswer(withTicks);
const name = lastAnswer(withBuildNames);
const sit = lastAnswer(toSession);
const compare = lastAnswer(compareBuilds);

/** Works out what a draft says. Steps whose input has not changed keep their last answer. */
export function derive(draft: Draft, units: UnitSet): Outcome<Derived> | null {
  if (draft.text.trim() === "") return null;
  const table = read(draft.text, draft.corrections);
  if (isProblem(table)) return table;
  const session = sit(name(tick(table, draft.ticks), draft.builds), draft.builds, draft.facts, units);
  return { table, session, comparison: compare(session) };
}

function toSession(
  table: ShotTable,
  builds: Draft["builds"],
  facts: Draft["facts"],
  units: UnitSet,
): Session {
  const calledNow = (was: string) => builds[was]?.name?.trim() || was;
  const told = new Map(
    Object.entries(builds).map(([was, details]) => [calledNow(was), { ...specFromName(was), ...details }]),
  );
  const specs = buildNames(table).map((name) => ({ ...specFromName(name), ...told.get(name), name }));
  return sessionOf(table, { ...facts, baseline: calledNow(facts.baseline), builds: specs, units });
}

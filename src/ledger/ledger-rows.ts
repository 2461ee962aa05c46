import { mean } from "simple-statistics";
import type { BuildSpec } from "../fitting/build-spec.ts";
import { clubKindIn } from "../fitting/club-kind.ts";
import { compareBuilds } from "../fitting/compare-builds.ts";
import type { Decision } from "../fitting/decide.ts";
import { sameConditions } from "../fitting/same-conditions.ts";
import type { Session } from "../fitting/session.ts";
import { sessionAir } from "../fitting/session-air.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { Cell, Row } from "./cell.ts";
import { MAIN_METRICS, SCHEMA_VERSION } from "./schema.ts";
import { sessionId } from "./session-id.ts";

/** What the session itself does not say. */
export interface LedgerExtra {
  /** What was ordered, by build; null: nothing any more. What the ledger says of other builds stays. */
  readonly ordered?: Readonly<Record<string, string | null>>;
  /** Left out: the notes that stand in the ledger stay. */
  readonly note?: string;
  /** The name that the ledger has for the session since it was first kept; left out: it is kept for the first time. */
  readonly session?: string;
}

/**
 * A session as rows of the ledger, one a build, in the order in which they were first hit. What was ordered and noted is
 * in a row only where it is told, for people write that into the table by hand, and keeping the session once more must
 * not empty it. No build is chosen where the verdict is that it is too close to call.
 */
export function ledgerRows(session: Session, decision: Outcome<Decision>, extra: LedgerExtra = {}): Row[] {
  const id = extra.session ?? sessionId(session);
  const { builds, differences } = compareBuilds(session);
  const same = sameConditions(session);
  const air = sessionAir(session.air);
  const named = !isProblem(decision) && decision.verdict !== "too close to call";
  const chances = isProblem(decision) ? [] : decision.chances.builds;
  return builds.map(({ name, shots, kept, metrics }, place) => {
    const gain = differences.find((one) => one.build === name && one.metric === "carry");
    const figures = MAIN_METRICS.map((key): Record<string, Cell> => {
      const found = metrics.get(key);
      return {
        [`${key}Mean`]: found?.mean ?? null,
        [`${key}Sd`]: found?.sd ?? null,
        [`${key}N`]: found?.n ?? 0,
      };
    });
    return {
      schema: SCHEMA_VERSION,
      entry: `${id}-${place + 1}`,
      session: id,
      date: session.date || null,
      player: session.player.trim() || null,
      hand: session.leftHanded ? "left" : "right",
      title: session.title || null,
      place: session.place || null,
      club: [...new Set(session.table.club)].filter((club) => club !== "").join(", ") || null,
      kind: clubKindIn(session.table, session.title).kind,
      goal: session.goal,
      build: name,
      baseline: name === session.baseline,
      ...specCells(session.builds[place]),
      shots,
      kept,
      ...Object.assign({}, ...figures),
      carrySameAir: isProblem(same) ? null : (same.find((one) => one.build === name)?.sameAir ?? null),
      airDensity: isProblem(air) || !air.stated ? null : air.density,
      tempo: tempoOf(session, name),
      gain: gain?.difference ?? null,
      gainLow: gain?.low ?? null,
      gainHigh: gain?.high ?? null,
      verdict: isProblem(decision) ? null : decision.verdict,
      chosen: named && decision.best.build === name,
      chance: chances.find((one) => one.build === name)?.chance ?? null,
      ...(extra.ordered?.[name] === undefined ? {} : { ordered: extra.ordered[name]?.trim() || null }),
      source: "fitting",
      ...(extra.note === undefined ? {} : { note: extra.note.trim() || null }),
    };
  });
}

function specCells(build: BuildSpec | undefined): Row {
  return {
    shaftWeight: build?.weight ?? null,
    length: build?.length ?? null,
    flex: build?.flex || null,
    profile: build?.profile || null,
    head: build?.head || null,
    loft: build?.loft ?? null,
    swingweight: build?.swingweight || null,
  };
}

/** Launch monitors do not measure tempo; where another device's column stands beside, its mean is taken. */
function tempoOf({ table }: Session, build: string): number | null {
  const column = table.extras.find(({ header }) => /\btempo\b/i.test(header));
  const figures = (column?.cells ?? []).flatMap((cell, shot) => {
    const figure = Number.parseFloat(cell.replace(",", "."));
    return table.build[shot] === build && table.keep[shot] && figure > 0 ? [figure] : [];
  });
  return figures.length === 0 ? null : mean(figures);
}

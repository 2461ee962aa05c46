import type { BuildSpec } from "../fitting/build-spec.ts";
import type { Goal } from "../fitting/session.ts";
import type { AirFacts } from "../fitting/session-air.ts";
import type { MetricKey } from "../shots/metrics.ts";
import type { ColumnReading } from "../shots/shot-table.ts";
import type { UnitSet } from "../shots/unit-set.ts";

/**
 * One fitting as the fitter left it: what was brought, kept word for word, and what was said about it. Everything
 * else the pane shows is worked out from this, so this alone is what is remembered.
 */
export interface Draft {
  readonly id: string;
  /** The pasted text, untouched. */
  readonly text: string;
  /** Columns that were taken for something else than they are; by column, counted from 1. */
  readonly corrections: Readonly<Record<string, Correction>>;
  readonly facts: Facts;
  /** Builds by the name they have in the text; what they are called since stands inside. */
  readonly builds: Readonly<Record<string, BuildDetails>>;
  /** Shots ticked or unticked by hand, by row of the text. */
  readonly ticks: Readonly<Record<string, boolean>>;
  readonly bench: BenchChoice;
  readonly plan: PlanChoice;
  /** What became of it in the ledger; left out where it was never kept there. */
  readonly ledger?: InLedger;
}

/**
 * What the ledger knows the session by since it was first kept, so that it stays one session when more shots come to it;
 * how many shots were archived; which build was said to be ordered, empty for none.
 */
export interface InLedger {
  readonly session: string;
  readonly shots: number;
  readonly ordered: string;
}

/** What is to be built. */
export interface BenchChoice {
  /** Name of the build; empty: the one that the verdict names. */
  readonly chosen: string;
  /** The set file as it was edited; null: the usual set that follows from the build. */
  readonly set: string | null;
}

/** What the test is to be, before the first ball. */
export interface PlanChoice {
  /** Names of builds, one a line. */
  readonly builds: string;
  /** Shots with each build; null: as many as the difference that matters asks for. */
  readonly shots: number | null;
  /** A difference in carry that matters and how far single shots spread, yards. */
  readonly difference: number;
  readonly spread: number;
}

export interface Correction {
  /** What the column holds; left out: as it was read; null: none of these. */
  readonly key?: ColumnReading["key"];
  /** The unit its figures came in; left out: as it was read. */
  readonly unit?: string;
}

export interface Facts {
  readonly title: string;
  readonly player: string;
  /** `yyyy-mm-dd` */
  readonly date: string;
  readonly place: string;
  readonly leftHanded: boolean;
  readonly goal: Goal;
  /** Name of the baseline build in the text; empty: the first one hit. */
  readonly baseline: string;
  /** Target windows that were changed by hand, in the units kept inside. */
  readonly windows: Readonly<Partial<Record<MetricKey, { readonly from: number; readonly to: number }>>>;
  /** The air it was hit in, as far as it was told. */
  readonly air: AirFacts;
  /** Whether carry, height and landing angle are computed where the table lacks them. */
  readonly fill: boolean;
}

/** What was told of a build; null: taken out by hand, so that nothing is read out of its name again. */
export type BuildDetails = { readonly [Key in keyof BuildSpec]?: BuildSpec[Key] | null };

/** All that is remembered: the sessions of a workbook and the units that people here think in. */
export interface Kept {
  readonly version: 1;
  readonly units: UnitSet;
  readonly open: string;
  readonly drafts: readonly Draft[];
  /** Sessions that were kept here and could not be read: never shown, and kept as they are. */
  readonly unread?: readonly unknown[];
}

/** Six shots each; five yards that matter, and seven that shots of a mid iron spread. Common practice, no source. */
const EMPTY_PLAN: PlanChoice = { builds: "", shots: 6, difference: 5, spread: 7 };

/** A session with nothing in it yet. */
export function emptyDraft(id: string, date = ""): Draft {
  return {
    id,
    text: "",
    corrections: {},
    facts: {
      title: "Build comparison",
      player: "",
      date,
      place: "",
      leftHanded: false,
      goal: "overall",
      baseline: "",
      windows: {},
      air: {},
      fill: false,
    },
    builds: {},
    ticks: {},
    bench: { chosen: "", set: null },
    plan: EMPTY_PLAN,
  };
}

/** Nothing remembered yet. */
export function nothingKept(date = "", units: UnitSet = "us"): Kept {
  return { version: 1, units, open: "1", drafts: [emptyDraft("1", date)] };
}

/** The session that is on the desk. */
export function openDraft(kept: Kept): Draft {
  return kept.drafts.find((draft) => draft.id === kept.open) ?? kept.drafts[0]!;
}

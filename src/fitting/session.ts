import type { MetricKey } from "../shots/metrics.ts";
import type { ShotTable } from "../shots/shot-table.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import { type BuildSpec, specFromName } from "./build-spec.ts";
import { clubKindIn } from "./club-kind.ts";
import type { AirFacts } from "./session-air.ts";
import { type TargetWindows, usualWindows } from "./target-windows.ts";

/**
 * What a fitting wants most of a build.
 *
 * - `carry`: the longest carry.
 * - `tight`: the smallest group.
 * - `window`: flight inside the target windows (launch, spin, height, landing angle).
 * - `overall`: all of these together.
 */
export type Goal = "carry" | "tight" | "window" | "overall";

/** All goals, for lists of choices and for checking what was typed. */
export const GOALS: readonly Goal[] = ["carry", "tight", "window", "overall"];

/** One fitting: who, when, where, what was hit, and what is wanted. Plain data, ready to be kept as JSON. */
export interface Session {
  readonly title: string;
  readonly player: string;
  /** `yyyy-mm-dd` */
  readonly date: string;
  readonly place: string;
  readonly leftHanded: boolean;
  readonly table: ShotTable;
  /** By metric, the shots of which the figure was computed, not measured; left out where all were measured. */
  readonly computed?: ReadonlyMap<MetricKey, ReadonlySet<number>>;
  /** In the order in which they were first hit. */
  readonly builds: readonly BuildSpec[];
  /** Name of the build that the others are held against: mostly what the player plays now. */
  readonly baseline: string;
  readonly goal: Goal;
  /** What the flight should be; the trade's usual windows until the fitter changes them. */
  readonly windows: TargetWindows;
  readonly units: UnitSet;
  /** What parts whole digits from decimals in sentences; a point where it is left out. Cells follow their spreadsheet. */
  readonly decimalMark?: string;
  /** The air it was hit in; left out: not stated, and taken for the reference air. */
  readonly air?: AirFacts;
}

/** Everything about a session but its shots, each with a sensible answer where it is left out. */
export type SessionFacts = Partial<Omit<Session, "table">>;

/** A session over a table of shots. Builds come from the table; what their names tell is taken up. */
export function sessionOf(table: ShotTable, facts: SessionFacts = {}): Session {
  const known = new Map((facts.builds ?? []).map((build) => [build.name, build]));
  const builds = buildNames(table).map((name) => known.get(name) ?? specFromName(name));
  const baseline = builds.find((build) => build.name.toLowerCase() === facts.baseline?.trim().toLowerCase());
  return {
    title: facts.title ?? "Build comparison",
    player: facts.player ?? "",
    date: facts.date ?? "",
    place: facts.place ?? "",
    leftHanded: facts.leftHanded ?? false,
    table,
    builds,
    baseline: (baseline ?? builds[0])?.name ?? "",
    goal: facts.goal ?? "overall",
    windows: { ...windowsFor(table, facts.title ?? ""), ...facts.windows },
    units: facts.units ?? "us",
    ...(facts.decimalMark ? { decimalMark: facts.decimalMark } : {}),
    ...(facts.air ? { air: facts.air } : {}),
  };
}

/** Names of the builds in a table, in the order in which they were first hit. */
export function buildNames(table: ShotTable): string[] {
  return [...new Set(table.build)];
}

/** The usual windows for the club that a table is about, at the median club speed of its shots. */
function windowsFor(table: ShotTable, title: string): TargetWindows {
  const speeds = (table.values.get("clubSpeed") ?? new Float64Array())
    .filter((value) => !Number.isNaN(value))
    .sort();
  return usualWindows(clubKindIn(table, title).kind, speeds[Math.floor(speeds.length / 2)] ?? Number.NaN);
}

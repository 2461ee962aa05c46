import { shownFigure } from "../fitting/plain-sentences.ts";
import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import { holm } from "../stats/index.ts";
import type { MeanDifference } from "../stats/welch.ts";
import { type MeanAndSpread, welchOfSummaries } from "../stats/welch-of-summaries.ts";
import { figureIn, type Row, textIn } from "./cell.ts";
import { playerKey } from "./player-key.ts";
import { buildKey, chosenRow, type LedgerSession, orderedRow, sessionsOf } from "./sessions-of.ts";

/** One player's earlier fitting held against a later one. */
export interface LookBack {
  /** Days of the two sessions. */
  readonly before: string;
  readonly after: string;
  /** The build that was ordered then, or chosen. */
  readonly build: string;
  /** Now against then, the same build: now less then, with 95 % limits; `real` after Holm over all of them. */
  readonly changes: readonly (MeanDifference & {
    readonly metric: MetricKey;
    readonly real: boolean;
    readonly words: string;
  })[];
  readonly gain: "kept" | "smaller" | "not kept" | "no saying";
  /** Was the predicted gain kept? In words. */
  readonly words: string;
  /** What these figures cannot say. */
  readonly notes: readonly string[];
}

const COMPARED: readonly MetricKey[] = [
  "clubSpeed",
  "ballSpeed",
  "launch",
  "spin",
  "height",
  "landingAngle",
  "carry",
  "offline",
];

/**
 * The player's last session with a kind of club against the last one before it in which the build that was ordered then,
 * or else chosen, was hit. Carries are compared in standard air where every build of the comparison has one, on both days;
 * else all of them as measured.
 */
export function lookBack(rows: readonly Row[], player: string, units: UnitSet = "us"): Outcome<LookBack[]> {
  const wanted = playerKey(player);
  if (wanted === "")
    return unavailable("The session names no player; name one to look back at their fittings.");
  const sessions = sessionsOf(rows).filter((session) => session.player === wanted);
  const kinds = [...new Set(sessions.map(({ kind }) => kind))];
  const found = kinds.flatMap((kind) => {
    const own = sessions.filter((session) => session.kind === kind);
    const now = own.at(-1)!;
    const then = own
      .slice(0, -1)
      .reverse()
      .find(({ rows: builds, date }) => date < now.date && winner(builds) !== null);
    const chosen = then ? winner(then.rows)! : null;
    return then && chosen ? [compare(then, now, chosen, units)] : [];
  });
  if (found.length > 0) return found;
  return unavailable(
    sessions.length < 2
      ? `The ledger has ${sessions.length === 0 ? "no session" : "one session"} of ${player}; it takes two on different days to look back.`
      : `No session of ${player} on an earlier day, with the same kind of club, chose a build.`,
  );
}

const winner = (rows: readonly Row[]) => orderedRow(rows) ?? chosenRow(rows) ?? null;

function compare(then: LedgerSession, now: LedgerSession, chosen: Row, units: UnitSet): LookBack {
  const again = now.rows.find((row) => buildKey(row) === buildKey(chosen)) ?? null;
  const base = then.rows.find((row) => row.baseline === true && row !== chosen) ?? null;
  const baseNow = base && (now.rows.find((row) => buildKey(row) === buildKey(base)) ?? null);
  // All or none: a lead then in one air and a lead now in another are no two of a kind.
  const involved = [chosen, again, base, baseNow].filter((row) => row !== null);
  const sameAir = involved.every((row) => figureIn(row, "carrySameAir") !== null);
  const stated = involved.every((row) => figureIn(row, "airDensity") !== null);
  const gain = gainWords(
    difference(chosen, base, sameAir),
    again ? difference(again, baseNow, sameAir) : null,
    units,
  );
  return {
    before: then.date,
    after: now.date,
    build: textIn(chosen, "build"),
    changes: again ? changesOf(chosen, again, sameAir, units) : [],
    gain: gain.kept,
    words: `${textIn(chosen, "build")}: ${gain.words}`,
    notes: [
      ...(again
        ? []
        : [`${textIn(chosen, "build")} was not hit on ${now.date}, so nothing tells how it does now.`]),
      sameAir
        ? "Carries are those of the same strikes in standard air at sea level."
        : "Carries are as measured: not every build of both days has what it takes to put them in the same air.",
      ...(sameAir && !stated ? ["The air of a session was not stated and is taken for standard air."] : []),
      "Two days differ in more than the club: swing, ball, mat and launch monitor. Only what was hit side by side on one day is a test of the club.",
      "The build that won then was the best of several, so some of its lead was luck: expect a little less of it now.",
    ],
  };
}

function summaryOf(row: Row | null, metric: MetricKey, sameAir: boolean): MeanAndSpread | null {
  if (!row) return null;
  const [mean, sd] = [figureIn(row, `${metric}Mean`), figureIn(row, `${metric}Sd`)];
  const n = figureIn(row, `${metric}N`) ?? figureIn(row, "kept");
  if (mean === null || sd === null || n === null) return null;
  const flown = metric === "carry" && sameAir ? figureIn(row, "carrySameAir") : null;
  return flown === null || mean === 0 ? { n, mean, sd } : { n, mean: flown, sd: (sd * flown) / mean };
}

function difference(row: Row, base: Row | null, sameAir: boolean): MeanDifference | null {
  const [a, b] = [summaryOf(row, "carry", sameAir), summaryOf(base, "carry", sameAir)];
  const found = a && b ? welchOfSummaries(a, b) : null;
  return found && !isProblem(found) ? found : null;
}

function changesOf(chosen: Row, again: Row, sameAir: boolean, units: UnitSet): LookBack["changes"] {
  const found = COMPARED.flatMap((metric) => {
    const [then, now] = [summaryOf(chosen, metric, sameAir), summaryOf(again, metric, sameAir)];
    const change = then && now ? welchOfSummaries(now, then) : null;
    return change && !isProblem(change) ? [{ metric, ...change }] : [];
  });
  const adjusted = holm(found.map(({ p }) => p));
  return found.map((one, i) => {
    const real = !isProblem(adjusted) && (adjusted[i] ?? 1) < 0.05;
    const by = shownFigure(Math.abs(one.difference), one.metric, units);
    const way =
      one.metric === "offline"
        ? one.difference > 0
          ? "to the right"
          : "to the left"
        : one.difference > 0
          ? "more"
          : "less";
    return {
      ...one,
      real,
      words: `${metricOf(one.metric).label}: ${by} ${way} than then, ${real ? "a real change" : "may be chance"}`,
    };
  });
}

/** Was the lead over the baseline, as it was then, found again? */
function gainWords(then: MeanDifference | null, now: MeanDifference | null, units: UnitSet) {
  const yards = (value: number) => `${value < 0 ? "-" : ""}${shownFigure(Math.abs(value), "carry", units)}`;
  const said = ({ difference: by, low, high }: MeanDifference) =>
    `${yards(by)} (${yards(low)} to ${yards(high)})`;
  if (!then) return { kept: "no saying" as const, words: "no gain over a baseline was measured then." };
  if (then.difference <= 0) {
    return {
      kept: "no saying" as const,
      words: `it was not chosen for carry: it carried ${said(then)} against the baseline.`,
    };
  }
  const predicted = `the carry gain measured then was ${said(then)}`;
  if (!now)
    return {
      kept: "no saying" as const,
      words: `${predicted}; the two were not hit side by side again, so nobody knows whether it was kept.`,
    };
  const measured = `${predicted}, now it is ${said(now)}`;
  if (now.low > 0 && now.high >= then.difference)
    return { kept: "kept" as const, words: `${measured}: kept.` };
  if (now.low > 0)
    return { kept: "smaller" as const, words: `${measured}: a gain still, but a smaller one.` };
  if (now.high < then.difference && now.high < then.difference / 2) {
    return { kept: "not kept" as const, words: `${measured}: not kept.` };
  }
  if (now.high < then.difference)
    return { kept: "smaller" as const, words: `${measured}: smaller than then, and perhaps none.` };
  return { kept: "no saying" as const, words: `${measured}: too few shots to say whether it was kept.` };
}

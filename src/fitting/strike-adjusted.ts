import { mean } from "simple-statistics";
import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { regression } from "../stats/index.ts";
import type { Session } from "./session.ts";

/** Carry as it was, and as it would be had every strike been as good as the session's average. */
export interface StrikeAdjusted {
  readonly build: string;
  readonly raw: number;
  readonly adjusted: number;
  /** What strike was judged by. */
  readonly by: "smash factor" | "distance from the middle of the face";
}

/**
 * Takes the luck of the strike out of carry: the line of carry on smash factor (or, where the table has no smash
 * factor, on distance from the middle of the face) within builds, all builds sharing one slope, moves each build's
 * mean to the session's mean strike. It is the analysis of covariance (Fisher 1932, Statistical Methods for Research
 * Workers, section 49.1). A build that itself makes strikes better or worse is helped or hurt by it, so the raw
 * figure always stands beside.
 */
export function strikeAdjusted(session: Session): Outcome<StrikeAdjusted[]> {
  const { table } = session;
  const carry = table.values.get("carry");
  const strike = strikeOf(session);
  if (!carry || !strike)
    return unavailable("Adjusting for the strike needs carry beside smash factor or strike place.");
  const rows = Array.from({ length: table.size }, (_, i) => i).filter(
    (i) => table.keep[i] && !Number.isNaN(carry[i]!) && !Number.isNaN(strike.values[i]!),
  );
  const names = session.builds
    .map(({ name }) => name)
    .filter((name) => rows.some((i) => table.build[i] === name));
  const columns = names.slice(1).map((name) => rows.map((i) => Number(table.build[i] === name)));
  const fit = regression(
    rows.map((i) => carry[i]!),
    [rows.map((i) => strike.values[i]!), ...columns],
  );
  if (isProblem(fit)) return fit;
  const overall = mean(rows.map((i) => strike.values[i]!));
  return names.map((build) => {
    const mine = rows.filter((i) => table.build[i] === build);
    const raw = mean(mine.map((i) => carry[i]!));
    const adjusted = raw - fit.slopes[0]!.value * (mean(mine.map((i) => strike.values[i]!)) - overall);
    return { build, raw, adjusted, by: strike.by };
  });
}

function strikeOf({ table }: Session): { values: Float64Array; by: StrikeAdjusted["by"] } | null {
  const smash = table.values.get("smash");
  if (smash) return { values: smash, by: "smash factor" };
  const [across, up] = [table.values.get("strikeX"), table.values.get("strikeY")];
  if (!across) return null;
  const distance = across.map((x, i) => Math.hypot(x, up?.[i] ?? 0));
  return { values: distance, by: "distance from the middle of the face" };
}

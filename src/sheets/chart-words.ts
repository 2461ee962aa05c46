import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import { unitText } from "./display-session.ts";
import { sessionWords } from "./session-words.ts";

/** Where each build's shots came down on average: "A: 6 shots, carry 161.6 yd, 1.2 yd right of the target." */
export function groupWords(session: Session, comparison: Comparison): string {
  return eachBuild(session, comparison, (mean, build) => {
    const [carry, offline] = [mean("carry"), mean("offline")];
    if (carry === null || offline === null) return null;
    const side = shown(session, "offline", Math.abs(offline));
    const way = offline > 0 ? "right" : "left";
    const where = Number.parseFloat(side) === 0 ? "on line" : `${side} ${way} of the target`;
    const shots = build.kept === 1 ? "1 shot" : `${build.kept} shots`;
    return `${shots}, carry ${shown(session, "carry", carry)}, ${where}`;
  });
}

/** Each build's mean carry with its limits: "A: 161.6 yd, between 158.1 yd and 165.2 yd." */
export function limitsWords(session: Session, comparison: Comparison, key: MetricKey): string {
  return eachBuild(session, comparison, (_, { metrics }) => {
    const found = metrics.get(key);
    if (!found) return null;
    const mean = shown(session, key, found.mean);
    if (found.low === null || found.high === null) return `${mean}, one shot only`;
    return `${mean}, between ${shown(session, key, found.low)} and ${shown(session, key, found.high)}`;
  });
}

/** A figure in the unit shown, with the metric's own decimals. */
export function shown({ units }: Session, key: MetricKey, value: number): string {
  const metric = metricOf(key);
  return `${value.toFixed(metric.decimals)} ${unitText(metric, units)}`.trim();
}

type Build = Comparison["builds"][number];

/** A clause for each build, figures as they are written at this place. The picture follows the ticks; words cannot. */
function eachBuild(
  session: Session,
  comparison: Comparison,
  say: (mean: (key: MetricKey) => number | null, build: Build) => string | null,
): string {
  const clauses = comparison.builds.flatMap((build) => {
    const said = say((key) => build.metrics.get(key)?.mean ?? null, build);
    return said === null ? [] : [`${build.name}: ${said}.`];
  });
  if (clauses.length === 0) return "";
  return sessionWords(session)(` When the sheet was made, on average: ${clauses.join(" ")}`);
}

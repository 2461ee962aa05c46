import { isProblem } from "../outcome/problem.ts";
import { figureText } from "../shots/figure-text.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import { displayUnit, type UnitSet } from "../shots/unit-set.ts";
import { convert } from "../units/convert.ts";
import type { BuildDifference, Comparison } from "./compare-builds.ts";
import type { Session } from "./session.ts";

/**
 * What the figures say of carry, build by build, in words a player follows. Three shots rarely prove anything, so a
 * difference whose limits reach across nothing is called too close to call, with the limits beside it.
 */
export function plainSentences(session: Session, comparison: Comparison): string[] {
  const key: MetricKey = "carry";
  const changes = comparison.differences.filter((change) => change.metric === key);
  if (changes.length === 0) {
    const measured = comparison.builds.some(({ metrics }) => metrics.has(key));
    // One build alone is told as such by the verdict; two builds of which one lacks carry have none to compare.
    if (measured && comparison.builds.length < 2) return [];
    return ["There is no carry to compare: a carry column with figures of at least two builds would do."];
  }
  return changes.map((change) => sentenceOn(change, comparison.baseline, session.units));
}

function sentenceOn(change: BuildDifference, baseline: string, units: UnitSet): string {
  const { build, difference, low, high } = change;
  const shown = (value: number) => shownFigure(value, change.metric, units);
  const limit = (value: number, way: string) => (isNought(shown(value)) ? "none" : shown(value) + way);
  if (low === null || high === null) {
    return `${build} carried ${shown(Math.abs(difference))} ${direction(difference)} than ${baseline}, but with so few shots nobody can say how sure that is: hit at least two with each.`;
  }
  if (low <= 0 && high >= 0) {
    return `${build} and ${baseline} are too close to call on carry: the difference may be anything from ${limit(-low, " shorter")} to ${limit(high, " longer")}.`;
  }
  const [near, far] = difference > 0 ? [low, high] : [-high, -low];
  return `${build} carried ${shown(Math.abs(difference))} ${direction(difference)} than ${baseline}; the true difference is most likely between ${isNought(shown(near)) ? "next to nothing" : shown(near)} and ${shown(far)}.`;
}

/** A limit that rounds to nothing has no digit to show. */
function isNought(figure: string): boolean {
  return /^0(\.0+)?(?!\S)/.test(figure);
}

function direction(difference: number): string {
  return difference >= 0 ? "farther" : "shorter";
}

/**
 * A figure with its unit, to the digits that the mean of a few shots carries: whole yards, feet and turns, one decimal
 * for small degrees and speeds, two for smash factor.
 */
export function shownFigure(value: number, key: MetricKey, units: UnitSet): string {
  const unit = displayUnit(metricOf(key), units);
  const figure = shownNumber(value, key, units);
  return unit === "" ? figure : `${figure} ${figure === "1.0" || figure === "1" ? singular(unit) : unit}`;
}

/** Two figures of one metric with the unit once: "4 to 9 yd". */
export function shownRange(from: number, to: number, key: MetricKey, units: UnitSet): string {
  const unit = displayUnit(metricOf(key), units);
  return `${shownNumber(from, key, units)} to ${shownNumber(to, key, units)}${unit === "" ? "" : ` ${unit}`}`;
}

function shownNumber(value: number, key: MetricKey, units: UnitSet): string {
  const metric = metricOf(key);
  const converted = convert(value, metric.unit, displayUnit(metric, units));
  const figure = isProblem(converted) ? value : converted;
  const size = Math.abs(figure);
  const far = metric.unit === "yd" || metric.unit === "ft" ? 1 : 10;
  const decimals = size >= far ? 0 : 1;
  return figureText(
    figure,
    metric.decimals === 2 ? 2 : Math.min(metric.decimals === 0 && size >= 1 ? 0 : 1, decimals),
  );
}

function singular(unit: string): string {
  return unit === "degrees" ? "degree" : unit;
}

import type { Comparison } from "../fitting/compare-builds.ts";
import type { Interval } from "../pictures/interval-picture.ts";
import type { MetricKey } from "../shots/metrics.ts";
import { type Display, unitTail } from "./display.ts";
import type { Figures } from "./figures.ts";

/** Each build's mean of a metric with its limits, in the units shown. Builds without a figure are left out. */
export function intervalsOf(comparison: Comparison, key: MetricKey, display: Display): Interval[] {
  return comparison.builds.flatMap(({ name, metrics }, place) => {
    const found = metrics.get(key);
    if (!found) return [];
    const shown = (value: number | null) => (value === null ? null : display.value(value));
    return [{ name, place, mean: display.value(found.mean), low: shown(found.low), high: shown(found.high) }];
  });
}

/** The same in words, for those who do not see the picture. */
export function intervalText(intervals: readonly Interval[], display: Display, figures: Figures): string {
  const show = (value: number) => figures.show(value, display.decimals);
  return intervals
    .map(({ name, mean, low, high }) => {
      const limits =
        low === null || high === null ? "one shot only" : `between ${show(low)} and ${show(high)}`;
      return `${name}: ${show(mean)}${unitTail(display.unit)}, ${limits}.`;
    })
    .join(" ");
}

import type { Comparison } from "../fitting/compare-builds.ts";
import { isProblem } from "../outcome/problem.ts";
import { flightCurve } from "../pictures/flight-curve.ts";
import type { Flight } from "../pictures/flight-picture.ts";
import type { MetricKey } from "../shots/metrics.ts";
import { convert } from "../units/convert.ts";
import type { Display } from "./display.ts";

/** Each build's average flight in the units shown; builds that lack a figure for it are left out. */
export function flightsOf(comparison: Comparison, carry: Display, height: Display): Flight[] {
  return comparison.builds.flatMap(({ name, metrics }, place) => {
    const mean = (key: MetricKey) => metrics.get(key)?.mean ?? Number.NaN;
    const peak = convert(mean("height"), "ft", "yd");
    if (isProblem(peak)) return [];
    const curve = flightCurve({
      launch: mean("launch"),
      height: peak,
      landingAngle: mean("landingAngle"),
      carry: mean("carry"),
    });
    if (curve.length === 0) return [];
    // Back from yards to what heights are kept in, feet.
    const points = curve.map((point) => ({
      ahead: carry.value(point.ahead),
      height: height.value(point.height * 3),
    }));
    return [{ name, place, points }];
  });
}

/** The flights in words, for those who do not see the picture. */
export function flightText(comparison: Comparison, carry: Display, height: Display): string {
  return comparison.builds
    .flatMap(({ name, metrics }) => {
      const far = metrics.get("carry");
      const high = metrics.get("height");
      return far && high
        ? [`${name} flies ${height.full(high.mean)} high and ${carry.full(far.mean)} far.`]
        : [];
    })
    .join(" ");
}

import type { Comparison } from "../fitting/compare-builds.ts";
import { meanFlight } from "../fitting/mean-flight.ts";
import type { Session } from "../fitting/session.ts";
import { isProblem } from "../outcome/problem.ts";
import { flightCurve } from "../pictures/flight-curve.ts";
import type { Flight } from "../pictures/flight-picture.ts";
import type { MetricKey } from "../shots/metrics.ts";
import type { Display } from "./display.ts";

const FEET_A_YARD = 3;

/**
 * Each build's average flight in the units shown: the flight model's, or, where a table lacks ball speed or spin, a curve
 * through launch angle, peak height, landing angle and carry. Builds that lack figures for both are left out.
 */
export function flightsOf(
  session: Session,
  comparison: Comparison,
  carry: Display,
  height: Display,
): Flight[] {
  return comparison.builds.flatMap((build, place) => {
    const flown = meanFlight(session, build.name);
    const way = isProblem(flown) ? drawn(build) : flown.points;
    if (way.length === 0) return [];
    const points = way.map((point) => ({
      ahead: carry.value(point.ahead),
      height: height.value(point.height),
    }));
    return [{ name: build.name, place, points }];
  });
}

/** A curve through the measured means, yards ahead and feet up. */
function drawn({ metrics }: Comparison["builds"][number]): { ahead: number; height: number }[] {
  const mean = (key: MetricKey) => metrics.get(key)?.mean ?? Number.NaN;
  const curve = flightCurve({
    launch: mean("launch"),
    height: mean("height") / FEET_A_YARD,
    landingAngle: mean("landingAngle"),
    carry: mean("carry"),
  });
  return curve.map((point) => ({ ahead: point.ahead, height: point.height * FEET_A_YARD }));
}

/** The flights in words, for those who do not see the picture: the tops and ends of what is drawn. */
export function flightText(flights: readonly Flight[], carry: Display, height: Display): string {
  return flights
    .map(({ name, points }) => {
      const high = Math.max(...points.map((point) => point.height));
      const far = Math.max(...points.map((point) => point.ahead));
      return `${name} flies ${height.shown(high)} high and ${carry.shown(far)} far.`;
    })
    .join(" ");
}

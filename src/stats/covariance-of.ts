import { mean, sum } from "simple-statistics";
import type { Numbers } from "./present.ts";

/** Centre and spread of points in a plane. */
export interface Covariance {
  readonly n: number;
  readonly meanX: number;
  readonly meanY: number;
  /** All n - 1; NaN for a single point, which has no spread. */
  readonly varianceX: number;
  readonly varianceY: number;
  readonly covariance: number;
}

/** The points of which both coordinates are there. */
export function presentPoints(x: Numbers, y: Numbers): (readonly [number, number])[] {
  return Array.from(x, (value, i) => [value, y[i] ?? Number.NaN] as const).filter(
    ([a, b]) => Number.isFinite(a) && Number.isFinite(b),
  );
}

/** Centre, variances and covariance (n - 1) of at least one point. */
export function covarianceOf(points: readonly (readonly [number, number])[]): Covariance {
  const n = points.length;
  const meanX = mean(points.map(([x]) => x));
  const meanY = mean(points.map(([, y]) => y));
  const over = (product: (dx: number, dy: number) => number) =>
    sum(points.map(([x, y]) => product(x - meanX, y - meanY))) / (n - 1);
  return {
    n,
    meanX,
    meanY,
    varianceX: over((dx) => dx * dx),
    varianceY: over((_, dy) => dy * dy),
    covariance: over((dx, dy) => dx * dy),
  };
}

import { normalTail } from "./normal-tail.ts";

/** Unknown means, each normal: where they lie and how surely. */
export interface Normals {
  readonly centre: readonly number[];
  readonly sd: readonly number[];
}

/** Points per standard deviation of the narrowest; at two the rule is exact to about 1e-8 for normal shapes. */
const DENSITY = 2;
const REACH = 6.5;
/** More are never needed by groups of shots; only so that no input makes the page wait. */
const MOST_PANELS = 2000;

/**
 * For each of several independent normal means the chance that it is the highest, by the trapezoid rule, which is
 * exact to many digits for smooth functions that die out at both ends (Davis and Rabinowitz 1984, Methods of
 * Numerical Integration, section 3.4).
 */
export function bestOfNormals({ centre, sd }: Normals): number[] {
  const k = centre.length;
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let narrowest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < k; i++) {
    low = Math.max(low, centre[i]! - REACH * sd[i]!);
    high = Math.max(high, centre[i]! + REACH * sd[i]!);
    narrowest = Math.min(narrowest, sd[i]!);
  }
  const points = Math.min(5 * MOST_PANELS, Math.ceil(((high - low) / narrowest) * DENSITY) + 1);
  const step = (high - low) / (points - 1);
  const chances = new Array<number>(k).fill(0);
  const below = new Float64Array(k);
  const heights = new Float64Array(k);
  // Stryker disable next-line EqualityOperator: beyond the last point next to nothing lies
  for (let g = 0; g < points; g++) {
    const x = low + g * step;
    // Stryker disable next-line EqualityOperator: a typed array takes nothing beyond its end
    for (let i = 0; i < k; i++) {
      const z = (x - centre[i]!) / sd[i]!;
      // Stryker disable next-line EqualityOperator,ConditionalExpression: saves working out what is next to nothing
      const bell = z < REACH ? Math.exp(-0.5 * z * z) : 0;
      heights[i] = bell / sd[i]!;
      // Stryker disable next-line EqualityOperator,ConditionalExpression: saves working out a tail of nought
      below[i] = bell > 0 ? normalTail(-z, bell) : 1;
    }
    for (let i = 0; i < k; i++) {
      let share = heights[i]!;
      for (let j = 0; j < k; j++) if (j !== i) share *= below[j]!;
      chances[i] = chances[i]! + share;
    }
  }
  const factor = step / Math.sqrt(2 * Math.PI);
  return chances.map((sum) => sum * factor);
}

/** The same for the chance of lying nearest to `target`. Distances fold at nought, so Gauss points serve here. */
export function nearestOfNormals({ centre, sd }: Normals, target: number): number[] {
  const k = centre.length;
  const far = centre.map((mean) => Math.abs(mean - target));
  const high = Math.min(...far.map((distance, i) => distance + REACH * sd[i]!));
  const narrowest = Math.min(...sd);
  // Nearer than this to the target none lies.
  const low = Math.max(0, Math.min(...far.map((distance, i) => distance - REACH * sd[i]!)));
  const panels = Math.min(MOST_PANELS, Math.max(4, Math.ceil(((high - low) / narrowest) * 0.8)));
  const width = (high - low) / panels;
  const chances = new Array<number>(k).fill(0);
  const beyond = new Float64Array(k);
  const heights = new Float64Array(k);
  // Stryker disable next-line EqualityOperator: beyond the last panel next to nothing lies
  for (let p = 0; p < panels; p++) {
    for (let q = 0; q < GAUSS.length; q++) {
      const { at, weight } = GAUSS[q]!;
      const r = low + (p + at) * width;
      // Stryker disable next-line EqualityOperator: a typed array takes nothing beyond its end
      for (let i = 0; i < k; i++) {
        const right = (r - far[i]!) / sd[i]!;
        const left = (r + far[i]!) / sd[i]!;
        const rightBell = Math.exp(-0.5 * right * right);
        // Stryker disable next-line EqualityOperator,ConditionalExpression: saves working out what is next to nothing
        const leftBell = left < REACH ? Math.exp(-0.5 * left * left) : 0;
        heights[i] = (rightBell + leftBell) / sd[i]!;
        // Beyond r on the one side, or beyond it on the other.
        // Stryker disable next-line EqualityOperator,ConditionalExpression: saves working out a tail of nought
        beyond[i] = normalTail(right, rightBell) + (leftBell > 0 ? normalTail(left, leftBell) : 0);
      }
      for (let i = 0; i < k; i++) {
        let share = heights[i]! * weight * width;
        for (let j = 0; j < k; j++) if (j !== i) share *= beyond[j]!;
        chances[i] = chances[i]! + share;
      }
    }
  }
  return chances.map((sum) => sum / Math.sqrt(2 * Math.PI));
}

/** Gauss-Legendre on 0 to 1 with five points (Abramowitz and Stegun 1964, table 25.4). */
const GAUSS = [
  { at: 0.5, weight: 128 / 450 },
  ...[
    { x: 0.538469310105683, w: 0.478628670499366 },
    { x: 0.906179845938664, w: 0.236926885056189 },
  ].flatMap(({ x, w }) => [
    { at: 0.5 - x / 2, weight: w / 2 },
    { at: 0.5 + x / 2, weight: w / 2 },
  ]),
];

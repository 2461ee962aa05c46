import { NO_DIFFERENCE, PRIOR_NODES } from "./build-prior.ts";
import type { GroupMean } from "./chance-best.ts";

/**
 * Chances of being best when each group has its own unknown spread: a mean is known up to Student's t about its
 * average, and leans towards the common mean as the prior has it. Densities are laid out on an even grid and added
 * up; the common mean and the spread among groups are averaged over on fixed points.
 */
export function separateChances(groups: readonly GroupMean[], target: number | null): number[] {
  const k = groups.length;
  const df = groups.reduce((sum, { n }) => sum + n - 1, 0);
  const typical = Math.sqrt(groups.reduce((sum, { n, sd }) => sum + (n - 1) * sd! ** 2, 0) / df);
  const total = new Array<number>(k).fill(0);
  const add = (weight: number, chances: readonly number[] | null) => {
    for (let i = 0; i < k; i++) total[i] = total[i]! + weight * (chances ? chances[i]! : 1 / k);
  };
  let grid: Grid | null = null;
  for (const { ratio, weight } of [{ ratio: 0, weight: NO_DIFFERENCE }, ...PRIOR_NODES]) {
    const among = ratio * typical;
    for (const { common, share } of commonMeans(groups, among)) {
      if (ratio === 0) {
        add(weight * share * product(groups.map((group) => density(group, common))), null);
        continue;
      }
      grid = gridFor(groups, common, among, grid);
      const { likelihood, chances } = onGrid(grid, common, among, target);
      add(weight * share * likelihood, chances);
    }
  }
  const sum = total.reduce((a, b) => a + b, 0);
  return total.map((chance) => chance / sum);
}

/** Points for the common mean, which may lie anywhere beforehand, and the stretch that each stands for. */
function commonMeans(groups: readonly GroupMean[], among: number): { common: number; share: number }[] {
  const weights = groups.map(({ n, sd }) => 1 / (among ** 2 + sd! ** 2 / n));
  const whole = weights.reduce((a, b) => a + b, 0);
  const centre = groups.reduce((sum, { mean }, i) => sum + mean * weights[i]!, 0) / whole;
  const width = 1 / Math.sqrt(whole);
  return Array.from({ length: 15 }, (_, i) => ({
    common: centre + (i - 7) * 0.7 * width,
    share: 0.7 * width,
  }));
}

/** How likely an average as far from `x` is, by Student's t, up to a factor that is the same for all x. */
function density({ n, mean, sd }: GroupMean, x: number): number {
  const distance = (x - mean) / sd!;
  const base = 1 + (distance * distance * n) / (n - 1);
  return 1 / (n % 2 === 0 ? wholePower(base, n / 2) : wholePower(base, (n - 1) / 2) * Math.sqrt(base));
}

/** By repeated squaring, several times as fast as a power of any kind. */
function wholePower(base: number, exponent: number): number {
  let power = 1;
  for (let square = base, left = exponent; left > 0; left >>= 1, square *= square) {
    if (left & 1) power *= square;
  }
  return power;
}

/** In standard errors: beyond, even Student's t with two degrees of freedom has next to nothing left. */
const REACH = 40;

/** Standard errors within which all but 1e-16 of the height lies; with many shots Student's t dies away much sooner. */
function reach({ n }: GroupMean): number {
  return Math.min(REACH, Math.sqrt((n - 1) * (1e-16 ** (-2 / n) - 1)));
}

const MOST_POINTS = 1500;

/** An even grid, and how likely each group's average is at each of its points. */
interface Grid {
  readonly low: number;
  readonly high: number;
  readonly points: number;
  readonly step: number;
  readonly lines: readonly Float64Array[];
}

/**
 * The grid for a common mean and a spread among groups: as wide as the prior and the groups reach, as fine as the
 * narrowest of them. Most of what is averaged over asks for the same grid, so the `last` one serves again.
 */
function gridFor(groups: readonly GroupMean[], common: number, among: number, last: Grid | null): Grid {
  const errors = groups.map(({ n, sd }) => sd! / Math.sqrt(n));
  const reaches = groups.map((group, i) => reach(group) * errors[i]!);
  const low = Math.max(common - 6 * among, Math.min(...groups.map(({ mean }, i) => mean - reaches[i]!)));
  const high = Math.min(common + 6 * among, Math.max(...groups.map(({ mean }, i) => mean + reaches[i]!)));
  const wished = Math.ceil((high - low) / (0.25 * Math.min(among, ...errors))) + 1;
  const points = Math.min(MOST_POINTS, Math.max(40, wished));
  // Stryker disable next-line all: a grid laid out afresh is the same grid
  if (last?.low === low && last.high === high && last.points === points) return last;
  const step = (high - low) / (points - 1);
  const lines = groups.map((group) => {
    const line = new Float64Array(points);
    // Stryker disable next-line EqualityOperator: a typed array takes nothing beyond its end
    for (let g = 0; g < points; g++) line[g] = density(group, low + g * step);
    return line;
  });
  return { low, high, points, step, lines };
}

function onGrid({ low, points, step, lines }: Grid, common: number, among: number, target: number | null) {
  const k = lines.length;
  const prior = new Float64Array(points);
  // Stryker disable next-line EqualityOperator: a typed array takes nothing beyond its end
  for (let g = 0; g < points; g++) {
    const z = (low + g * step - common) / among;
    prior[g] = Math.exp(-0.5 * z * z) / (among * Math.sqrt(2 * Math.PI));
  }
  const heights = lines.map((line) => {
    const height = new Float64Array(points);
    // Stryker disable next-line EqualityOperator: a typed array takes nothing beyond its end
    for (let g = 0; g < points; g++) height[g] = line[g]! * prior[g]!;
    return height;
  });
  const stretches = heights.map(stretchOf);
  const sums = heights.map((line, i) => cumulative(line, step, stretches[i]!));
  const likelihood = product(sums.map((line) => line[points - 1]!));
  const totals = heights.map((own, i) => {
    const others = [...heights.keys()].filter((j) => j !== i);
    const { from, to } = stretches[i]!;
    // To be the highest, a mean must lie above where each of the others begins.
    // Stryker disable next-line all: it only spares points at which one of the others is certain to be higher
    const start = target === null ? Math.max(from, ...others.map((j) => stretches[j]!.from)) : from;
    let total = 0;
    for (let g = start; g <= to; g++) {
      let share = own[g]!;
      for (const j of others) {
        share *= target === null ? sums[j]![g]! : farther(heights[j]!, sums[j]!, g, step, low, target);
      }
      total += share;
    }
    return total;
  });
  const all = totals.reduce((a, b) => a + b, 0);
  return { likelihood, chances: totals.map((total) => (all > 0 ? total / all : 1 / k)) };
}

/** The first and the last point of a line that count. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Parts of the greatest height as small as this come to nothing in a double, however many of them there are. */
const NOTHING = 1e-17;

/** Where a line is more than nothing, and two points beyond, which its running sum looks at. */
function stretchOf(line: Float64Array): Stretch {
  // Stryker disable all: it only spares sums of nothing; over the whole line they come to the same
  let greatest = 0;
  for (let g = 0; g < line.length; g++) if (line[g]! > greatest) greatest = line[g]!;
  const least = greatest * NOTHING;
  let [from, to] = [0, line.length - 1];
  while (from < to && line[from]! <= least) from++;
  while (from < to && line[to]! <= least) to--;
  // Stryker restore all
  return { from: Math.max(0, from - 2), to: Math.min(line.length - 1, to + 2) };
}

/** The mass that lies farther from the target than grid point `g` does. */
function farther(
  heights: Float64Array,
  sums: Float64Array,
  g: number,
  step: number,
  from: number,
  target: number,
): number {
  const mirror = (2 * target - (from + g * step) - from) / step;
  const a = sums[g]!;
  const b = at(heights, sums, mirror, step);
  return sums[sums.length - 1]! - Math.abs(a - b);
}

/** The running sum between grid points, by the cubic that has the right heights and slopes at both. */
function at(heights: Float64Array, sums: Float64Array, place: number, step: number): number {
  const last = sums.length - 1;
  // Stryker disable next-line EqualityOperator: at the first point the sum is nought
  if (place <= 0) return 0;
  // Stryker disable next-line EqualityOperator: behind the last point there is no next, and the sum is whole
  if (place >= last) return sums[last]!;
  const g = Math.floor(place);
  const t = place - g;
  const rise = sums[g + 1]! - sums[g]!;
  const [m0, m1] = [heights[g]! * step, heights[g + 1]! * step];
  return sums[g]! + t * (m0 + t * (3 * rise - 2 * m0 - m1 + t * (m0 + m1 - 2 * rise)));
}

/** Running integral of a smooth line that is nought outside a stretch, to the fourth order in the step. */
function cumulative(line: Float64Array, step: number, { from, to }: Stretch): Float64Array {
  const sums = new Float64Array(line.length);
  const last = line.length - 1;
  let sum = 0;
  for (let g = Math.max(1, from); g <= to; g++) {
    const before = g > 1 ? line[g - 2]! : 0;
    const after = g < last ? line[g + 1]! : 0;
    sum += (step / 24) * (13 * (line[g - 1]! + line[g]!) - before - after);
    sums[g] = sum;
  }
  return sums.fill(sum, to + 1);
}

function product(factors: readonly number[]): number {
  return factors.reduce((a, b) => a * b, 1);
}

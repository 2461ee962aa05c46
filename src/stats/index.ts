// The contents page of the statistics: what there is, grouped by the question it answers. Each file holds one idea,
// states its convention and cites its source. (A heading needs the empty line below it, or sorting moves it.)

// One column of one build.

export { hodgesLehmann, hodgesLehmannCentre } from "./hodges-lehmann.ts";
export { modifiedZScores, outlierCutoff } from "./modified-z-score.ts";
export { type Numbers, present } from "./present.ts";
export { type Summary, summary } from "./summary.ts";

// Two builds.

export { hedgesG } from "./hedges-g.ts";
export { mostSplits, permutationP } from "./permutation-p.ts";
export { type MeanDifference, welch } from "./welch.ts";

// Several builds: do they differ, and from the baseline by how much?

export { type Anova, anova } from "./anova.ts";
export { brownForsythe } from "./brown-forsythe.ts";
export {
  type BaselineComparison,
  type BaselineRow,
  compareWithBaseline,
} from "./compare-with-baseline.ts";
export { type BaselineDifference, type Dunnett, dunnett } from "./dunnett.ts";
export { dunnettFactor } from "./dunnett-factor.ts";
export { dunnettUpperTail } from "./dunnett-upper-tail.ts";
export { holm } from "./holm.ts";
export { type SharedSpread, sharedSpread, spreadLevel } from "./shared-spread.ts";
export { spreadTest } from "./spread-test.ts";
export { type WelchAnova, welchAnova } from "./welch-anova.ts";

// Which build is best, and how many shots tell?

export { bechhoferFactor, bechhoferShots } from "./bechhofer-shots.ts";
export { chanceBest, type Goal, type GroupMean } from "./chance-best.ts";
export { powerOfTwo, shotsNeeded } from "./shots-needed.ts";

// Groups on the ground.

export type { Ellipse } from "./ellipse.ts";
export { type GroupSummary, groupSummary } from "./group-summary.ts";
export { type Hotelling, hotellingEllipse, hotellingTest } from "./hotelling.ts";
export { normalEllipse } from "./normal-ellipse.ts";

// What goes with what.

export { type Line, ols } from "./ols.ts";
export { type Coefficient, type Regression, regression } from "./regression.ts";

// Distributions: quantiles, and tails taken from the upper end.

export { chiSquareQuantile } from "./chi-square-quantile.ts";
export { fQuantile } from "./f-quantile.ts";
export { fUpperTail } from "./f-upper-tail.ts";
export { noncentralTUpperTail } from "./noncentral-t-upper-tail.ts";
export { normalQuantile } from "./normal-quantile.ts";
export { normalUpperTail } from "./normal-upper-tail.ts";
export { tQuantile } from "./t-quantile.ts";
export { tUpperTail } from "./t-upper-tail.ts";

// Integrals without random numbers, and random numbers that a seed repeats.

export { averageOverSpread } from "./average-over-spread.ts";
export { integrate } from "./integrate.ts";
export { type SeededRandom, seededRandom } from "./seeded-random.ts";

// The contents page of the statistics: what there is, grouped by the question it answers. Each file holds one idea,
// states its convention and cites its source.

export { type Anova, anova } from "./anova.ts";
// Integrals without random numbers, and random numbers that a seed repeats.
export { averageOverSpread } from "./average-over-spread.ts";
export { bechhoferFactor, bechhoferShots } from "./bechhofer-shots.ts";
export { brownForsythe } from "./brown-forsythe.ts";
// Which build is best, and how many shots tell?
export { chanceBest, type Goal, type GroupMean } from "./chance-best.ts";
// Distributions: quantiles, and tails taken from the upper end.
export { chiSquareQuantile } from "./chi-square-quantile.ts";
// Several builds: do they differ, and from the baseline by how much?
export {
  type BaselineComparison,
  type BaselineRow,
  compareWithBaseline,
} from "./compare-with-baseline.ts";
export { type BaselineDifference, type Dunnett, dunnett } from "./dunnett.ts";
export { dunnettFactor } from "./dunnett-factor.ts";
export { dunnettUpperTail } from "./dunnett-upper-tail.ts";
export type { Ellipse } from "./ellipse.ts";
export { fQuantile } from "./f-quantile.ts";
export { fUpperTail } from "./f-upper-tail.ts";
// Groups on the ground.
export { type GroupSummary, groupSummary } from "./group-summary.ts";
export { hedgesG } from "./hedges-g.ts";
export { hodgesLehmann, hodgesLehmannCentre } from "./hodges-lehmann.ts";
export { holm } from "./holm.ts";
export { type Hotelling, hotellingEllipse, hotellingTest } from "./hotelling.ts";
export { integrate } from "./integrate.ts";
export { modifiedZScores, outlierCutoff } from "./modified-z-score.ts";
export { noncentralTUpperTail } from "./noncentral-t-upper-tail.ts";
export { normalEllipse } from "./normal-ellipse.ts";
export { normalQuantile } from "./normal-quantile.ts";
export { normalUpperTail } from "./normal-upper-tail.ts";
// What goes with what.
export { type Line, ols } from "./ols.ts";
export { mostSplits, permutationP } from "./permutation-p.ts";
// One column of one build.
export { type Numbers, present } from "./present.ts";
export { type Coefficient, type Regression, regression } from "./regression.ts";
export { type SeededRandom, seededRandom } from "./seeded-random.ts";
export { type SharedSpread, sharedSpread, spreadLevel } from "./shared-spread.ts";
export { powerOfTwo, shotsNeeded } from "./shots-needed.ts";
export { type Summary, summary } from "./summary.ts";
export { tQuantile } from "./t-quantile.ts";
export { tUpperTail } from "./t-upper-tail.ts";
// Two builds.
export { type MeanDifference, welch } from "./welch.ts";
export { type WelchAnova, welchAnova } from "./welch-anova.ts";

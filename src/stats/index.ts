// The contents page of the statistics: what there is, grouped by the question it answers. Each file holds one idea,
// states its convention and cites its source.

// Distributions: quantiles, and tails taken from the upper end.
export { chiSquareQuantile } from "./chi-square-quantile.ts";
export { fQuantile } from "./f-quantile.ts";
export { fUpperTail } from "./f-upper-tail.ts";
export { modifiedZScores, outlierCutoff } from "./modified-z-score.ts";
export { normalQuantile } from "./normal-quantile.ts";
export { normalUpperTail } from "./normal-upper-tail.ts";
// One column of one build.
export { type Numbers, present } from "./present.ts";
export { type Summary, summary } from "./summary.ts";
export { tQuantile } from "./t-quantile.ts";
export { tUpperTail } from "./t-upper-tail.ts";
// Two builds.
export { type MeanDifference, welch } from "./welch.ts";

/**
 * What is supposed of builds before the first ball: in one session of twenty they differ in nothing but name, in the
 * others their true means lie about a common one with a spread that is half-t with four degrees of freedom and this
 * scale, counted in spreads of single shots. Small differences are common and large ones rare, which is what keeps a lucky group of
 * three from being taken for proof. Common practice in kind (Gelman 2006, Bayesian Analysis 1, 515-534, on
 * half-normal and half-t scales); the two figures are ours, and `npm run bench -- decide` shows how verdicts fare
 * when the truth is otherwise.
 */
export const NO_DIFFERENCE = 0.05;
const TYPICAL_DIFFERENCE = 0.8;

/** A value of the ratio of the two spreads and how much of the prior it stands for. */
export interface PriorNode {
  readonly ratio: number;
  readonly weight: number;
}

const TAIL_DF = 4;
const FIRST = 0.12;
const GROWTH = 1.55;
const NODES = 13;

/**
 * The part of the prior in which builds do differ, as points even in the logarithm of the ratio, with weights that
 * sum to 1 - NO_DIFFERENCE. They reach to 23 spreads, so that even a driver beside a wedge finds its place.
 */
export const PRIOR_NODES: readonly PriorNode[] = (() => {
  const ratios = Array.from({ length: NODES }, (_, i) => FIRST * GROWTH ** i);
  const heights = ratios.map(
    (ratio) => ratio * (1 + (ratio / TYPICAL_DIFFERENCE) ** 2 / TAIL_DF) ** (-(TAIL_DF + 1) / 2),
  );
  const total = heights.reduce((sum, height) => sum + height, 0);
  return ratios.map((ratio, i) => ({ ratio, weight: ((1 - NO_DIFFERENCE) * heights[i]!) / total }));
})();

import { bestOfNormals, nearestOfNormals } from "./best-of-normals.ts";
import { NO_DIFFERENCE, PRIOR_NODES } from "./build-prior.ts";
import type { GroupMean } from "./chance-best.ts";

/**
 * Chances of being best when all groups share one unknown spread. Given the ratio of the spread among groups to the
 * spread within them, all of the usual one-way model is known in closed form (Box and Tiao 1973, Bayesian Inference
 * in Statistical Analysis, sections 5.2 and 7.2): each mean is normal about a point between its own average and the
 * common one. What is left, the shared spread and the common mean, is averaged over on fixed points.
 */
export function pooledChances(groups: readonly GroupMean[], target: number | null): number[] {
  const k = groups.length;
  const within = groups.reduce((sum, { n, sd }) => sum + (n > 1 ? (n - 1) * sd! ** 2 : 0), 0);
  const df = groups.reduce((sum, { n }) => sum + n - 1, 0) + k - 1;
  // Stryker disable next-line all: it only spares an average of chances that are all the same
  const balanced = groups.every(({ n }) => n === groups[0]!.n);
  const fits = [{ ratio: 0, weight: NO_DIFFERENCE }, ...PRIOR_NODES].map(({ ratio, weight }) =>
    fitWith(groups, ratio, weight, within, df),
  );
  const best = Math.max(...fits.map(({ logLikelihood }) => logLikelihood));
  const weights = fits.map((fit) => fit.weight * Math.exp(fit.logLikelihood - best));
  const whole = weights.reduce((a, b) => a + b, 0);
  const total = new Array<number>(k).fill(0);
  for (const [f, fit] of fits.entries()) {
    const part = weights[f]! / whole;
    // Builds that differ in nothing share the chance.
    const chances =
      fit.ratio === 0 ? null : chancesGiven(groups, fit, df, target, balanced, NEGLIGIBLE / part);
    for (let i = 0; i < k; i++) total[i] = total[i]! + part * (chances ? chances[i]! : 1 / k);
  }
  const sum = total.reduce((a, b) => a + b, 0);
  return total.map((chance) => chance / sum);
}

/** A part of the whole that is left out: all such parts together move no chance by 1e-8. */
const NEGLIGIBLE = 1e-11;

interface Fit {
  readonly ratio: number;
  readonly weight: number;
  readonly logLikelihood: number;
  /** The common mean, its variance in units of the shared variance, and the sum of squares left. */
  readonly common: number;
  readonly commonVariance: number;
  readonly squares: number;
}

function fitWith(
  groups: readonly GroupMean[],
  ratio: number,
  weight: number,
  within: number,
  df: number,
): Fit {
  let weights = 0;
  let weighted = 0;
  let logs = 0;
  for (const { n, mean } of groups) {
    const variance = ratio ** 2 + 1 / n;
    weights += 1 / variance;
    weighted += mean / variance;
    logs += Math.log(variance);
  }
  const common = weighted / weights;
  const among = groups.reduce((sum, { n, mean }) => sum + (mean - common) ** 2 / (ratio ** 2 + 1 / n), 0);
  const squares = within + among;
  const logLikelihood = -0.5 * (logs + Math.log(weights) + df * Math.log(squares));
  return { ratio, weight, logLikelihood, common, commonVariance: 1 / weights, squares };
}

/** Averages over the shared spread, and over the common mean where it matters; parts below `least` are left out. */
function chancesGiven(
  groups: readonly GroupMean[],
  fit: Fit,
  df: number,
  target: number | null,
  balanced: boolean,
  least: number,
): number[] {
  const lean = groups.map(({ n }) => fit.ratio ** 2 / (fit.ratio ** 2 + 1 / n));
  // Equal groups lean on the common mean alike, so that where it lies moves all of them and decides nothing.
  const commons = balanced && target === null ? [{ z: 0, part: 1 }] : NORMAL_NODES;
  const sum = new Array<number>(groups.length).fill(0);
  for (const { spread, part } of parts(spreadNodes(fit.squares, df))) {
    for (const node of commons) {
      const share = part * node.part;
      // Stryker disable next-line EqualityOperator,ConditionalExpression: saves working out what is next to nothing
      if (share < least) continue;
      const common = fit.common + node.z * spread * Math.sqrt(fit.commonVariance);
      const normals = {
        centre: groups.map(({ mean }, i) => lean[i]! * mean + (1 - lean[i]!) * common),
        sd: groups.map(({ n }, i) => spread * Math.sqrt(lean[i]! / n)),
      };
      const chances = target === null ? bestOfNormals(normals) : nearestOfNormals(normals, target);
      for (let i = 0; i < sum.length; i++) sum[i] = sum[i]! + share * chances[i]!;
    }
  }
  return sum;
}

/** Points of the shared spread, whose square is `squares` over chi-square, even in its logarithm. */
function spreadNodes(squares: number, df: number): { spread: number; weight: number }[] {
  const middle = 0.5 * Math.log(squares / df);
  const width = 1 / Math.sqrt(2 * df);
  return Array.from({ length: 17 }, (_, i) => {
    const off = (i - 6) * 0.6 * width;
    return { spread: Math.exp(middle + off), weight: Math.exp(-df * (off + Math.expm1(-2 * off) / 2)) };
  });
}

/** Weights as parts of their sum. */
function parts<Node extends { readonly weight: number }>(
  nodes: readonly Node[],
): (Node & { part: number })[] {
  const sum = nodes.reduce((total, { weight }) => total + weight, 0);
  return nodes.map((node) => ({ ...node, part: node.weight / sum }));
}

/** Points of a standard normal, even from -3.6 to 3.6. */
const NORMAL_NODES = parts(
  Array.from({ length: 7 }, (_, i) => {
    const z = (i - 3) * 1.2;
    return { z, weight: Math.exp(-0.5 * z * z) };
  }),
);

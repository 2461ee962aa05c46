import betainc from "@stdlib/math-base-special-betainc";
import chiSquareByLibrary from "@stdlib/stats-base-dists-chisquare-quantile";
import fByLibrary from "@stdlib/stats-base-dists-f-quantile";
import normalCdf from "@stdlib/stats-base-dists-normal-cdf";
import normalByLibrary from "@stdlib/stats-base-dists-normal-quantile";
import tByLibrary from "@stdlib/stats-base-dists-t-quantile";
import fc from "fast-check";
import { expect, test } from "vitest";
import { gammaTails } from "../../src/stats/gamma-tails.ts";
import {
  chiSquareQuantile,
  fQuantile,
  fUpperTail,
  normalQuantile,
  normalUpperTail,
  tQuantile,
  tUpperTail,
} from "../../src/stats/index.ts";
import { expectClose } from "./expect-close.ts";

// Recomputed with 50-digit arithmetic from the definitions (Abramowitz and Stegun 1964, 26.7.1, 26.6.2, 26.2.3 and
// 26.4.19), by their continued fractions 26.5.8 and 6.5.31.
const T_UPPER = [
  [0.001, 2.7, 0.49963566225602735],
  [0.5, 0.5, 0.3786590364647183],
  [1.25, 17.776, 0.11375316284649001],
  [3.5, 1, 0.08858553278290475],
  [8, 5000.5, 7.669776710724409e-16],
  [25, 12, 5.0823988077331584e-12],
  [40, 60.5, 1.5918747794715096e-45],
  [75, 200, 1.0734185346215318e-148],
  [130, 326, 3.1951861988638644e-283],
] as const;
const F_UPPER = [
  [0.02, 0.7, 3, 0.8174427593339132],
  [0.9, 3, 40.5, 0.4495551097479853],
  [4.25, 5.5, 7.25, 0.03896111350129623],
  [12, 30, 1000, 1.3170722495934014e-48],
  [20, 2, 326, 6.412861962496447e-9],
  [150, 12, 120, 3.4041485101209326e-66],
  [230, 5, 2000, 2.7626869814197083e-194],
] as const;
const NORMAL_UPPER = [
  [-Infinity, 1],
  [-3, 0.9986501019683699],
  [-2.3, 0.9892758899783242],
  [0.25, 0.4012936743170763],
  [0.7, 0.241963652223073],
  [1.7, 0.04456546275854304],
  [2.5, 0.006209665325776135],
  [5.3, 5.790134039964594e-8],
  [5.75, 4.462172453901612e-9],
  [12, 1.776482112077679e-33],
  [12.3, 4.528706956158785e-35],
  [25.7, 5.844410374380774e-146],
  [26.5, 4.8461626603033206e-155],
  [36.1, 1.1340034358936236e-285],
  [37, 5.725571222524577e-300],
  [Infinity, 0],
] as const;
const GAMMA_TAILS = [
  [0.001, 0.5, 0.03567059172967989, 0.9643294082703201],
  [2, 0.25, 0.9827139881404833, 0.017286011859516774],
  [3, 3, 0.5768099188731565, 0.42319008112684353],
  [40, 30, 0.9567713178482644, 0.043228682151735566],
  [300, 12.5, 1, 1.2001678135079937e-110],
  [700, 3, 1, 2.4225323864783197e-299],
] as const;

/** Beyond 1e-100 the rounding of the argument alone, times the steepness there, comes to more than 1e-13. */
const within = (p: number) => (p > 1e-100 ? 1e-13 : 5e-13);

test("upper tails of t keep their digits down to 1e-283, with broken degrees of freedom too", () => {
  for (const [t, df, p] of T_UPPER) expectClose(tUpperTail(t, df), p, within(p));
});

test("upper tails of F keep their digits down to 1e-194, with broken degrees of freedom too", () => {
  for (const [f, above, below, p] of F_UPPER) expectClose(fUpperTail(f, above, below), p, within(p));
});

test("upper tails of the normal distribution are exact to 1e-15 down to 1e-300", () => {
  for (const [z, p] of NORMAL_UPPER) expectClose(normalUpperTail(z), p, 1e-15);
});

test("both tails of gamma keep their digits down to 1e-299", () => {
  for (const [x, shape, lower, upper] of GAMMA_TAILS) {
    const tails = gammaTails(x, shape);
    expectClose(Math.exp(tails.logLower), lower, within(lower));
    expectClose(Math.exp(tails.logUpper), upper, within(upper));
  }
});

const DFS = [1, 1.5, 2, 2.7, 3, 5, 8.33, 12, 17.776, 30, 60.5, 120, 326, 1000];
const POINTS = [0.001, 0.02, 0.3, 0.8, 1, 1.3, 2, 3, 4.5, 8];
const LEVELS = [0.001, 0.01, 0.05, 0.2, 0.4, 0.6, 0.75, 0.9, 0.975, 0.999];

/** The library's tail, asked for at the end where its argument is well conditioned. */
function fTailByLibrary(f: number, above: number, below: number): number {
  const scaled = above * f;
  return scaled > below
    ? betainc(below / (below + scaled), below / 2, above / 2)
    : betainc(scaled / (below + scaled), above / 2, below / 2, true, true);
}

// Second reference: the general statistics library.
test("tails over a wide grid agree with the library's incomplete beta to 1e-12", () => {
  for (const df of DFS) {
    for (const x of POINTS) {
      expectClose(tUpperTail(x, df), fTailByLibrary(x * x, 1, df) / 2, 1e-12);
      for (const above of DFS) {
        expectClose(fUpperTail(x, above, df), fTailByLibrary(x, above, df), 1e-12);
      }
    }
  }
  for (const z of POINTS) expectClose(normalUpperTail(z), normalCdf(-z, 0, 1), 1e-13);
});

test("quantiles over a wide grid agree with the library's to 1e-12", () => {
  for (const p of LEVELS) {
    expectClose(normalQuantile(p), normalByLibrary(p, 0, 1), 1e-13);
    for (const df of DFS) {
      expectClose(tQuantile(p, df), tByLibrary(p, df), 1e-12);
      expectClose(chiSquareQuantile(p, df), chiSquareByLibrary(p, df), 1e-12);
      for (const above of DFS) expectClose(fQuantile(p, above, df), fByLibrary(p, above, df), 1e-12);
    }
  }
});

const anyDf = fc.double({ min: 0.5, max: 1e6, noNaN: true });
const anyTail = fc.double({ min: -250, max: Math.log10(0.5), noNaN: true }).map((power) => 10 ** power);

test("the upper tail of a lower t quantile's opposite is the probability it was asked for", () => {
  fc.assert(
    fc.property(anyTail, anyDf, (p, df) => {
      const t = -tQuantile(p, df);
      if (t < 1e150) expectClose(tUpperTail(t, df), p, 2e-15 * (df + 100));
    }),
  );
});

test("no probability and no degrees of freedom lead to NaN", () => {
  const level = fc.double({ min: 0, max: 1, minExcluded: true, maxExcluded: true, noNaN: true });
  fc.assert(
    fc.property(level, anyDf, anyDf, fc.double({ min: 0, noNaN: true }), (p, a, b, x) => {
      const found = [tQuantile(p, a), fQuantile(p, a, b), chiSquareQuantile(p, a), normalQuantile(p)];
      const tails = [tUpperTail(x, a), tUpperTail(-x, a), fUpperTail(x, a, b), normalUpperTail(x)];
      for (const value of found) expect(value).not.toBeNaN();
      for (const tail of tails) {
        expect(tail).toBeGreaterThanOrEqual(0);
        expect(tail).toBeLessThanOrEqual(1);
      }
    }),
  );
});

import { expect, test } from "vitest";
import { hedgesCorrection } from "../../src/stats/hedges-correction.ts";
import { logExcess } from "../../src/stats/log-excess.ts";
import { stirlingError } from "../../src/stats/stirling-error.ts";
import { expectClose } from "./expect-close.ts";

// Recomputed with 50-digit arithmetic from log gamma (Abramowitz and Stegun 1964, 6.1.40).
const ERRORS = [
  [0.01, 1.4340079537031842],
  [0.5, 0.15342640972002736],
  [1, 0.08106146679532726],
  [4.75, 0.017518258673226934],
  [10, 0.00833056343336287],
  [163, 0.0005112468023612153],
] as const;

test("Stirling's error is right to 1e-15, below and above where the series begins", () => {
  for (const [z, error] of ERRORS) expect(Math.abs(stirlingError(z) - error)).toBeLessThan(2e-15);
});

// The exact correction of Hedges 1981, from 50-digit gammas.
const CORRECTIONS = [
  [2, 0.5641895835477563],
  [3, 0.7236012545582676],
  [7, 0.8882029076727512],
  [18, 0.957646427023718],
  [326, 0.9976973261563312],
] as const;

test("the correction of an effect size is the ratio of gammas that Hedges gives", () => {
  for (const [df, correction] of CORRECTIONS) expectClose(hedgesCorrection(df), correction, 1e-15);
});

// Leading terms of u - log(1 + u) = u^2 / 2 - u^3 / 3 + ... (Abramowitz and Stegun 1964, 4.1.24).
test("the excess of u over log(1 + u) keeps its digits near nought and meets the plain difference away from it", () => {
  for (const u of [1e-3, -1e-3, 1e-6, -1e-9, 1e-100]) {
    expectClose(logExcess(u), u * u * (1 / 2 - u / 3 + (u * u) / 4 - u ** 3 / 5 + u ** 4 / 6), 1e-14);
  }
  for (const u of [0.499, 0.501, -0.499, -0.501, 3, 1e9]) expectClose(logExcess(u), u - Math.log1p(u), 2e-15);
  expect(logExcess(0)).toBe(0);
});

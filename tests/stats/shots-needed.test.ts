import { expect, test } from "vitest";
import { noncentralTUpperTail, powerOfTwo, shotsNeeded, tQuantile } from "../../src/stats/index.ts";
import { expectClose } from "./expect-close.ts";

// Two-sided 5 %, recomputed with 40-digit arithmetic from the noncentral t.
test("the power of twenty against twenty agrees, with and without the wrong side", () => {
  expectClose(powerOfTwo(20, 1), 0.8689528016921273);
  const wrongSide = noncentralTUpperTail(tQuantile(0.975, 38), 38, -Math.sqrt(10));
  expectClose(powerOfTwo(20, 1) + wrongSide, 0.86895302772399);
});

test("the broken sample sizes of the 40-digit reference have exactly the power they are for", () => {
  expectClose(powerOfTwo(22.021095570096826, 1), 0.9);
  expectClose(powerOfTwo(63.765763724850615, 0.5), 0.8);
  expectClose(powerOfTwo(16.71475983116192, 1), 0.8);
  expectClose(powerOfTwo(25.524631229907094, 0.8), 0.8);
});

// Cohen 1988, Statistical Power Analysis for the Behavioral Sciences, table 2.4.1 (two-sided 5 %).
test("the shots needed are Cohen's whole numbers", () => {
  expect(shotsNeeded(1, 0.5)).toBe(64);
  expect(shotsNeeded(1, 0.8)).toBe(26);
  expect(shotsNeeded(1, 1)).toBe(17);
  expect(shotsNeeded(8, -8, 0.9)).toBe(23);
});

// Reference library: scipy 1.17.1, nct.sf.
test("tails of the noncentral t agree with a reference library", () => {
  expectClose(noncentralTUpperTail(2, 5, 1), 0.22192533738378514);
  expectClose(noncentralTUpperTail(2.5, 17.5, 3), 0.6897123419260651);
  expectClose(noncentralTUpperTail(-1, 4, 0.5), 0.9138504309634372);
  expectClose(noncentralTUpperTail(8, 10, 2), 0.00093034923843737, 1e-11);
});

test("two shots are enough for a huge difference, and a tiny one has no answer", () => {
  expect(shotsNeeded(1, 100)).toBe(2);
  const none = { kind: "unavailable", message: expect.stringContaining("524288") };
  expect(shotsNeeded(1, 1e-6)).toMatchObject(none);
  // About 2 (1.96 + 0.84)^2 over the difference squared: some 700 000, and some 430 000.
  expect(shotsNeeded(1, 0.00474)).toMatchObject(none);
  expect(shotsNeeded(1, 0.00604)).toBeTypeOf("number");
});

test("the least number is the least: one shot fewer falls short", () => {
  const n = shotsNeeded(6.2, 4.1, 0.85, 0.9) as number;
  expect(powerOfTwo(n, 4.1 / 6.2, 0.9)).toBeGreaterThanOrEqual(0.85);
  expect(powerOfTwo(n - 1, 4.1 / 6.2, 0.9)).toBeLessThan(0.85);
});

test("no spread, no difference and a power of 80 are refused by name", () => {
  expect(shotsNeeded(0, 5)).toMatchObject({ kind: "invalid", message: expect.stringContaining("sd is 0") });
  expect(shotsNeeded(5, 0)).toMatchObject({
    kind: "invalid",
    message: expect.stringContaining("difference"),
  });
  expect(shotsNeeded(5, 5, 80)).toMatchObject({ kind: "invalid", message: expect.stringContaining("power") });
});

test("a spread or a difference without end and a confidence of 95 are refused by name", () => {
  const endless = Number.POSITIVE_INFINITY;
  expect(shotsNeeded(endless, 5)).toMatchObject({ message: expect.stringContaining("sd is Infinity") });
  expect(shotsNeeded(5, endless)).toMatchObject({
    message: expect.stringContaining("difference is Infinity"),
  });
  expect(shotsNeeded(5, 5, 0.8, 95)).toMatchObject({ message: expect.stringContaining("confidence is 95") });
});

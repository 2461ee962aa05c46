import { expect, it } from "vitest";
import { buildSteps } from "../../src/sheets/build-steps.ts";
import { smallJob, TWO_IRONS } from "./small-bench.ts";

it("says the bend limit that was entered, and else to ask the maker", () => {
  const bending = (text: string) => buildSteps(smallJob(text)).find((step) => step.startsWith("Bend"))!;
  expect(bending(TWO_IRONS)).toContain("No bend limit was entered");
  expect(bending(`bend limit; 1.5\n${TWO_IRONS}`)).toContain("Entered limit: 1.5°");
});

it("keeps every step to one line of the sheet, which surely holds 208 letters, its number included", () => {
  const longest = buildSteps(smallJob()).map((step, i) => `${i + 1}. ${step}`.length);
  expect(Math.max(...longest)).toBeLessThanOrEqual(208);
});

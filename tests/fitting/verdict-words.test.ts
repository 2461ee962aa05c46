import { expect, it } from "vitest";
import { decide } from "../../src/fitting/decide.ts";
import { verdictWords } from "../../src/fitting/verdict-words.ts";
import { sessionOfShots } from "./session-of-shots.ts";

/** All sentences of the verdict on some carries. */
function said(carries: Readonly<Record<string, number[]>>): string {
  const session = { ...sessionOfShots(carries), goal: "carry" as const };
  const { headline, reasons, costs } = verdictWords(session, decide(session));
  return [headline, ...reasons, ...costs].join("\n");
}

it("figures that look the same are not held against each other", () => {
  const alike = said({ A: [150, 152, 151], B: [151, 150, 152.4] });
  expect(alike).toMatch(/^Carry: 151 yd on average, as with [AB]\.$/m);
  expect(alike).not.toMatch(/(\d+ \w+).*against \1\b/);
});

it("figures that differ are", () => {
  expect(said({ A: [150, 152, 151], B: [161, 160, 162] })).toMatch(
    /^Carry: 161 yd on average, against 151 yd with A\.$/m,
  );
});

import { describe, expect, it } from "vitest";
import { decide } from "../../src/fitting/decide.ts";
import { verdictWords } from "../../src/fitting/verdict-words.ts";
import { answer } from "../club/answer.ts";
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

describe("a choice that shots cannot make", () => {
  const pairs = (carries: number[], sides: number[]) =>
    carries.map((carry, i) => [carry, sides[i]!] as const);
  const near = sessionOfShots(
    {
      Now: pairs([160, 158, 163, 157, 161, 159], [4, -9, 8, -6, 5, -3]),
      Long: pairs([168, 160, 165, 170, 159, 167], [12, -14, 9, -11, 13, -12]),
      Tight: pairs([164, 163, 165, 164, 163, 166], [3, -2, 2, 1, -3, 2]),
    },
    { goal: "carry" },
  );
  const decision = answer(decide(near));
  const words = verdictWords(near, decision);

  it("tells the two it is between beside each other, and not the one they are to replace", () => {
    expect(decision.verdict).toBe("too close to call");
    const { best, runnerUp } = decision;
    expect([best.build, runnerUp.build].sort()).toEqual(["Long", "Tight"]);
    for (const sentence of words.reasons) expect(sentence).toContain(runnerUp.build);
    expect(words.reasons.join(" ")).not.toContain("Now");
  });

  it("tells no figure twice where the cost is against the same build", () => {
    expect(words.costs.join(" ")).not.toMatch(/\d/);
  });
});

import { expect, test } from "vitest";
import { doubtsOf } from "../../src/pane/doubts.ts";
import { figuresFor } from "../../src/pane/figures.ts";

test("a shot's doubts are one sentence that says what is far off and which way", () => {
  const proposal = { row: 9, build: "A", message: "" };
  const far = [
    { ...proposal, index: 7, key: "carry", value: 120, score: -5 } as const,
    { ...proposal, index: 7, key: "smash", value: 1.2, score: -4 } as const,
    { ...proposal, index: 7, key: "offline", value: 30, score: 6 } as const,
    { ...proposal, index: 8, key: "launch", value: 25, score: 4 } as const,
  ];
  const doubts = doubtsOf(far, "us", figuresFor("en-GB"));
  expect([...doubts.keys()]).toEqual([7, 8]);
  expect(doubts.get(7)!.replaceAll("\u202f", " ")).toBe(
    "Far below the rest in carry 120.0 yd, smash factor 1.20; far above the rest in offline 30.0 yd. Your choice.",
  );
  expect(doubts.get(8)).toBe("Far above the rest in launch angle 25.0\u00b0. Your choice.");
});

import { describe, expect, it } from "vitest";
import { shotsForDifference, type TestPlan, testPlan, williamsSquare } from "../../src/fitting/test-plan.ts";

describe("williamsSquare(k)", () => {
  // Williams 1949: each treatment once at each place, and each ordered pair of neighbours equally often.
  it.each([2, 3, 4, 5, 6, 7, 8])("is balanced in place and in what comes before, for %d builds", (k) => {
    const square = williamsSquare(k);
    const copies = square.length / k;
    for (let place = 0; place < k; place++) {
      for (let b = 0; b < k; b++) expect(square.filter((row) => row[place] === b)).toHaveLength(copies);
    }
    const pairs = new Map<string, number>();
    for (const row of square) {
      row.slice(1).forEach((b, i) => {
        const pair = `${row[i]} ${b}`;
        pairs.set(pair, (pairs.get(pair) ?? 0) + 1);
      });
    }
    expect(pairs.size).toBe(k * (k - 1));
    expect(new Set(pairs.values()).size).toBe(1);
  });
});

describe("testPlan(builds, shotsEach)", () => {
  it("hits each build once a round and as often as asked", () => {
    const { rounds } = testPlan(["A", "B", "C"], 5) as TestPlan;
    expect(rounds).toHaveLength(5);
    for (const round of rounds) expect([...round].sort()).toEqual(["A", "B", "C"]);
  });

  it("refuses one build and parts of a shot", () => {
    expect(testPlan(["A"], 3)).toMatchObject({ kind: "invalid" });
    expect(testPlan(["A", "B"], 2.5)).toMatchObject({ kind: "invalid" });
  });
});

describe("shotsForDifference(sd, difference)", () => {
  // Cohen 1988, table 2.4.1: 26 a group for d = 0.8 at power 0.80, two-sided 0.05.
  it("agrees with Cohen's table", () => expect(shotsForDifference(5, 4)).toBe(26));
  it("is never fewer than three", () => expect(shotsForDifference(1, 100)).toBe(3));
});

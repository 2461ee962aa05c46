import { expect, test } from "vitest";
import {
  type BaselineComparison,
  compareWithBaseline,
  type Dunnett,
  dunnett,
  hedgesG,
  hodgesLehmann,
  holm,
  type MeanDifference,
  welch,
} from "../../src/stats/index.ts";
import { bloodCounts } from "./published-data.ts";

const answer = (groups: number[][], baseline = 0) =>
  compareWithBaseline(groups, baseline) as BaselineComparison;

// Dunnett 1955: `dunnett` is checked against published figures in its own test.
test("groups that spread alike are compared by Dunnett's method", () => {
  const alike = [
    [250, 252, 249, 255, 251],
    [256, 255, 259, 251, 254],
    [247, 252, 250, 249, 244],
  ];
  const found = answer(alike);
  const expected = (dunnett(alike, 0) as Dunnett).differences[2]!;
  expect(found.method).toBe("dunnett");
  expect(found.reason).toContain("pooled");
  expect(found.rows[2]).toMatchObject({ n: 5, low: expected.low, high: expected.high, p: expected.p });
  expect(found.rows[0]).toMatchObject({ difference: null, low: null, p: null, g: null, shift: null });
});

test("groups that spread differently keep their own spread, by Holm over Welch with Bonferroni's limits", () => {
  const wide = [200, 262, 271, 230, 281, 240];
  const groups = [[250, 252, 249, 255, 251, 250], [256, 255, 259, 251, 254, 256], wide];
  const found = answer(groups);
  const first = welch(groups[1]!, groups[0]!, 0.975) as MeanDifference;
  const second = welch(wide, groups[0]!, 0.975) as MeanDifference;
  expect(found.method).toBe("holm-welch");
  expect(found.rows[1]!.low).toBe(first.low);
  expect(found.rows[2]!.high).toBe(second.high);
  expect([found.rows[1]!.p, found.rows[2]!.p]).toEqual(holm([first.p, second.p]));
});

test("a group with a single value has a difference but no limits, and does not widen the others'", () => {
  const found = answer([...bloodCounts, [9.1], []]);
  expect(found.rows[3]).toMatchObject({ n: 1, sd: null, low: null, high: null, p: null });
  expect(found.rows[3]!.difference).toBeCloseTo(9.1 - 49.5 / 6, 12);
  expect(found.rows[4]).toMatchObject({ n: 0, mean: null, difference: null });
  expect(found.rows[1]).toEqual(answer(bloodCounts).rows[1]);
});

test("one value a group gives no limits and says so", () => {
  const found = answer([[250], [256], [251]]);
  expect(found.method).toBe("none");
  expect(found.reason).toContain("no limits");
  expect(found.rows[1]).toMatchObject({ difference: 6, low: null, high: null, p: null });
});

test("turning the baseline round turns the signs round", () => {
  const [first, second] = [bloodCounts[0]!, bloodCounts[2]!];
  const there = answer([first, second], 0).rows[1]!;
  const back = answer([first, second], 1).rows[0]!;
  expect(back.difference).toBe(-there.difference!);
  expect(back.low).toBe(-there.high!);
  expect(back.g).toBe(-there.g!);
  expect(back.p).toBe(there.p);
});

test("a baseline that is not there or is empty gives a sentence", () => {
  expect(compareWithBaseline(bloodCounts, -1)).toMatchObject({ kind: "invalid" });
  expect(compareWithBaseline([[], [1, 2]], 0)).toMatchObject({ kind: "unavailable" });
});

test("each row has its own count, mean and spread, and its effect beside the baseline", () => {
  const found = answer([
    [1, 2, 3, 6],
    [4, 5, 9, 10],
  ]);
  // By hand: means 3 and 7, squares about them 14 and 26, so spreads sqrt(14 / 3) and sqrt(26 / 3); of the sixteen
  // differences the middle two are 3 and 4.
  expect(found.rows[0]).toMatchObject({ n: 4, mean: 3, sd: expect.closeTo(Math.sqrt(14 / 3), 12) });
  expect(found.rows[1]).toMatchObject({
    n: 4,
    mean: 7,
    difference: 4,
    sd: expect.closeTo(Math.sqrt(26 / 3), 12),
    g: hedgesG([4, 5, 9, 10], [1, 2, 3, 6]),
    shift: hodgesLehmann([4, 5, 9, 10], [1, 2, 3, 6]),
  });
});

test("a confidence of 95 is refused, and a baseline beyond the last group by name", () => {
  expect(compareWithBaseline(bloodCounts, 0, 95)).toMatchObject({ kind: "invalid" });
  expect(compareWithBaseline(bloodCounts, 3)).toMatchObject({
    message: "The baseline is group 3; it must be a whole number from 0 to 2.",
  });
});

test("a baseline of one value leaves every group without limits", () => {
  const found = answer([[250], [256, 258], [251, 255, 253]]);
  expect(found.method).toBe("none");
  expect(found.rows[2]).toMatchObject({ difference: 3, low: null, high: null, p: null });
});

test("groups without any spread give no limits and say so", () => {
  const found = answer([
    [250, 250],
    [256, 256],
  ]);
  expect(found.method).toBe("none");
  expect(found.rows[1]).toMatchObject({ difference: 6, low: null, high: null, p: null });
});

test("a baseline and a group that both hold one value over and over have no limits beside a third that spreads", () => {
  const wide = [230, 262, 271, 225, 281, 240];
  const still = new Array<number>(6).fill(250);
  const found = answer([still, still.map((x) => x + 5), wide]);
  expect(found.method).toBe("holm-welch");
  expect(found.rows[1]).toMatchObject({ difference: 5, low: null, p: null });
  const alone = welch(wide, still, 0.975) as MeanDifference;
  expect(found.rows[2]).toMatchObject({ low: alone.low, high: alone.high, p: alone.p });
});

test("a baseline of two values has limits", () => {
  expect(answer([[250, 252], bloodCounts[1]!]).rows[1]!.low).toBeTypeOf("number");
});

import { expect, it } from "vitest";
import { callFunction } from "../../../src/functions/define-function.ts";
import { SORTSHAFTS } from "../../../src/functions/set/sort-shafts.ts";
import { refusal } from "../../club/answer.ts";

// Every answer here is small enough to be worked out by trying all ways by hand.

it("SORTSHAFTS counts the shafts as they stand on the sheet, blanks and all", () => {
  const weights = [[null], [105], [""], [98], [0], [110]];
  expect(callFunction(SORTSHAFTS, [weights, [[100], [104]]])).toEqual([
    [4, 98, -2],
    [2, 105, 1],
  ]);
});

it("SORTSHAFTS answers an empty row for a blank target", () => {
  expect(callFunction(SORTSHAFTS, [[[105, 98]], [[100], [null], [104]]])).toEqual([
    [2, 98, -2],
    ["", "", ""],
    [1, 105, 1],
  ]);
});

it("SORTSHAFTS says how many shafts are missing", () => {
  const answer = callFunction(SORTSHAFTS, [[[105]], [[100], [104]]]) as unknown[][];
  expect(refusal(answer[0]![0])).toBe("weights has 1 shaft for 2 targets; 1 more is needed.");
});

it("SORTSHAFTS names the item that is no weight, by its place on the sheet", () => {
  const answer = callFunction(SORTSHAFTS, [[[null], [105], [-3]], [[100]]]) as unknown[][];
  expect(refusal(answer[0]![0])).toBe("weights: item 3 is -3; it should be a number above 0, or blank.");
});

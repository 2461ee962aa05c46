import { describe, expect, it } from "vitest";
import { FUNCTIONS } from "../../src/functions/catalogue.ts";
import { argumentsOf, callFunction } from "../../src/functions/define-function.ts";
import { isProblem } from "../../src/outcome/problem.ts";

const spec = (id: string) => FUNCTIONS.find((one) => one.id === id)!;
const call = (id: string, ...raw: unknown[]) => callFunction(spec(id), raw);
const message = (answer: unknown) => {
  const problem = Array.isArray(answer) ? answer[0]![0] : answer;
  expect(isProblem(problem)).toBe(true);
  return problem.message as string;
};

describe("callFunction(spec, raw) spreads and checks arguments from the table", () => {
  it("answers a single value for single arguments and a range of one for a range of one", () => {
    expect(call("SWINGWEIGHT", 430, 29.1)).toBe("D8.9");
    expect(call("SWINGWEIGHT", [[430]], [[29.1]], null)).toEqual([["D8.9"]]);
  });

  it("spills a column of weights, a row of balance points, and the two against each other", () => {
    expect(call("SWINGWEIGHT", [[430], [425]], [[29.1]])).toHaveLength(2);
    expect(call("SWINGWEIGHT", [[430]], [[29.1, 29.0, 28.9]])).toEqual([["D8.9", "D8.0", "D7.1"]]);
    const both = call("SWINGWEIGHT", [[430], [425]], [[29.1, 29.0]]) as unknown[][];
    expect(both.map((row) => row.length)).toEqual([2, 2]);
    expect(both[0]![0]).toBe("D8.9");
  });

  it("answers not available beyond the end of the shorter range", () => {
    const answer = call("SWINGWEIGHT", [[430], [425], [420]], [[29.1], [29]]) as unknown[][];
    expect(answer[2]![0]).toMatchObject({ kind: "unavailable" });
  });

  it("leaves a row empty where every ranged argument is blank, as null, as an empty text or as 0", () => {
    expect(call("SWINGWEIGHT", [[430], [null], [""], [0]], [[29.1], [null], [""], [0]])).toEqual([
      ["D8.9"],
      [""],
      [""],
      [""],
    ]);
  });

  it("leaves a row empty whose blanks all arrived as 0, though an angle or a code is among them", () => {
    const flown = call("FLIGHT", [[120], [0]], [[16], [0]], [[5800], [0]]) as unknown[][];
    expect(flown[1]).toEqual(["", "", "", "", "", ""]);
    expect(call("SWINGWEIGHT.DIFF", [["C9"], [0]], [["D2"], [0]])).toEqual([[3], [""]]);
    expect(call("AIRDENSITY", [[68], [0]], [[29.92], [0]], [[50], [0]])).toMatchObject([
      [expect.any(Number)],
      [""],
    ]);
  });

  it("still answers a row of angles that are 0, and still refuses a row with one quantity missing", () => {
    expect(call("SPINLOFT", [[30], [0]], [[-4], [0]])).toMatchObject([[expect.any(Number)], [0]]);
    const flown = call("FLIGHT", [[120], [0]], [[16], [0]], [[5800], [5800]]) as unknown[][];
    expect(flown[1]![0]).toMatchObject({
      kind: "invalid",
      message: expect.stringMatching(/^ballSpeed is blank/),
    });
  });

  it("takes a blank that arrives as 0 for a choice or a name that was left out", () => {
    expect(call("AIRAT", 5280, 59, 0, 0)).toBe(call("AIRAT", 5280, 59, 0));
    const lists = [
      [["A"], ["A"], ["B"], ["B"]],
      [[150], [152], [156], [158]],
    ];
    expect(call("COMPARE", ...lists, 0)).toEqual(call("COMPARE", ...lists));
  });

  it("says of a figure that is text that it is text, for it looks like one that would do", () => {
    expect(message(call("SWINGWEIGHT", "430", 29.1))).toBe(
      'weight is "430", which is text and no number; it should be the club\'s total weight in grams, above 0.',
    );
    expect(message(call("SUMMARY", [[150], ["152,5"]]))).toBe(
      'values: item 2 is "152,5", which is text and no number; it should be a number, or blank.',
    );
  });

  it("tells the air it was hit in from the reference air where one of them is no density", () => {
    expect(message(call("NORMALIZE", 180, 120, 16, 5800, 1.05, 29.92))).toBe(
      "reference is 29.92; it should be an air density in kg/m3 (1.225 where left out), above 0 and at most 2.",
    );
    expect(message(call("NORMALIZE", 180, 120, 16, 5800, 29.92))).toMatch(
      /^density is 29.92; .* at most 2\.$/,
    );
  });

  it("names the argument, what was found and what would do", () => {
    expect(message(call("SWINGWEIGHT", "heavy", 29.1))).toBe(
      'weight is "heavy"; it should be the club\'s total weight in grams, above 0.',
    );
    expect(message(call("SWINGWEIGHT", 430, null))).toMatch(/^balance is blank; it should be/);
    expect(message(call("SWINGWEIGHT", 430, true))).toMatch(/^balance is TRUE/);
    expect(message(call("SWINGWEIGHT", -5, 29.1))).toMatch(/^weight is -5/);
  });

  it("refuses text in a list of numbers and says which item", () => {
    expect(message(call("SUMMARY", [[150], ["far"], [152]]))).toBe(
      'values: item 2 is "far"; it should be a number, or blank.',
    );
  });

  it("gives an answer's problem to its own cell only, so that good rows still answer", () => {
    const answer = call("SWINGWEIGHT", [[430], ["x"]], [[29.1], [29.1]]) as unknown[][];
    expect(answer[0]![0]).toBe("D8.9");
    expect(answer[1]![0]).toMatchObject({ kind: "invalid" });
  });

  it("puts headings above a row answer when asked", () => {
    const answer = call("SUMMARY", [[150], [152]], null, true) as unknown[][];
    expect(answer[0]![0]).toBe("n");
    expect(answer).toHaveLength(2);
  });

  it("never lets a blank become a 0-yard shot, whether it arrives as null, as empty text or as 0", () => {
    const [row] = call("SUMMARY", [[150], [null], [0], [""], [152]]) as unknown[][];
    expect(row![0]).toBe(2);
    expect(row![1]).toBe(151);
  });

  it("counts an exact 0 where keep says so", () => {
    const [row] = call("SUMMARY", [[-3], [0], [3]], [[true], [true], [false]]) as unknown[][];
    expect(row!.slice(0, 2)).toEqual([2, -1.5]);
  });

  it("says when keep and values differ in length", () => {
    expect(message(call("SUMMARY", [[1], [2]], [[true]]))).toMatch(/equal length/);
  });

  it("answers lists in the shape of the list, blanks staying empty", () => {
    expect(call("PROGRESSION", [["5i", "", "6i", "7i"]], "7I", 105, 3)).toEqual([[99, "", 102, 105]]);
  });

  it("never throws and never answers NaN, whatever it is handed", () => {
    const odd = [
      undefined,
      null,
      "",
      "x",
      Number.NaN,
      Number.POSITIVE_INFINITY,
      -1,
      0,
      true,
      [],
      [[]],
      [[null]],
      [["x", 1]],
      {},
    ];
    for (const one of FUNCTIONS) {
      for (const a of odd) {
        for (const b of odd) {
          const raw = argumentsOf(one).map((_, i) => (i % 2 ? b : a));
          const answer = callFunction(one, raw);
          for (const cell of Array.isArray(answer) ? answer.flat() : [answer]) {
            expect(cell, `${one.id}(${JSON.stringify(raw)})`).not.toBeNaN();
            expect(cell).not.toBeUndefined();
            expect(cell).not.toBeNull();
          }
        }
      }
    }
  });
});

import { expect, test } from "vitest";
import type { FunctionSpec } from "../../src/functions/define-function.ts";
import { callPattern, exampleFormula } from "../../src/functions/example-formula.ts";

const spec = (call: readonly unknown[]): FunctionSpec => ({
  id: "TRY.IT",
  arguments: [],
  shape: "one",
  example: { call, answer: 1, source: "" },
  answer: () => 1,
});

test("a function's pattern puts in brackets what may be left out", () => {
  expect(callPattern("TRY.IT", [{ name: "weight" }, { name: "fulcrum", optional: true }])).toBe(
    "=CLUB.TRY.IT(weight, [fulcrum])",
  );
});

// Array constants as the Open Document and Office Open XML formula grammars of English workbooks write them:
// commas between columns, semicolons between rows, quotes in texts doubled.
test.each([
  [[430, 29.1], "=CLUB.TRY.IT(430, 29.1)"],
  [[[[151], [118]], true], "=CLUB.TRY.IT({151;118}, TRUE)"],
  [[[[1, 2]], "D2"], '=CLUB.TRY.IT({1,2}, "D2")'],
  [[1, null, 'the "old" one'], '=CLUB.TRY.IT(1, , "the ""old"" one")'],
])("the example %j is written as a formula", (call, formula) => {
  expect(exampleFormula(spec(call))).toBe(formula);
});

import { expect, test } from "vitest";
import { formulaAt, relativeFormula } from "./relative-formula.ts";

const source = "ISO/IEC 29500-1, 18.17.2.3: references of cells in A1 and in R1C1 form";

test.each([
  ["=B3*2", "=RC[-1]*2"],
  ["=SUM($B$1:C3)", "=SUM(R1C2:RC)"],
  ["=B$2+$A4", "=R2C[-1]+R[1]C1"],
  ["='B3''s'!B3&\"B3\"", "='B3''s'!RC[-1]&\"B3\""],
  ["=LOG10(B3)+Ledger[@C3]", "=LOG10(RC[-1])+Ledger[@C3]"],
])(`%s in C3 is %s (${source})`, (formula, relative) => {
  expect(relativeFormula(formula, 2, 2)).toBe(relative);
  expect(formulaAt(relative, 2, 2)).toBe(formula);
});

test("a formula that moves up reads what stands above what it read", () => {
  expect(formulaAt(relativeFormula("=B3*2+$A$1", 2, 2), 1, 2)).toBe("=B2*2+$A$1");
});

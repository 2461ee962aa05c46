import { describe, expect, test } from "vitest";
import { fileFormula, withoutPrefixes } from "../../../src/hosts/file/file-formula.ts";

describe("fileFormula", () => {
  // Source of what takes a prefix: [MS-XLSX] 2.2.3, Functions.
  test.each([
    ["STDEV.S(A1:A9)", "_xlfn.STDEV.S(A1:A9)"],
    ["t.inv.2t(0.05,9)*stdev.s(A1:A9)", "_xlfn.t.inv.2t(0.05,9)*_xlfn.stdev.s(A1:A9)"],
    ["IF(A1>0,BETA.INV(0.5,2,3),CONCAT(A1,B1))", "IF(A1>0,_xlfn.BETA.INV(0.5,2,3),_xlfn.CONCAT(A1,B1))"],
    ["-AGGREGATE(1,6,A1:A9)", "-_xlfn.AGGREGATE(1,6,A1:A9)"],
    ["{1,2}+VAR.S (A1)", "{1,2}+VAR.S (A1)"],
  ])("puts the prefix before newer functions in %s", (formula, file) => {
    expect(fileFormula(formula)).toBe(file);
  });

  test.each([
    "IFERROR(AVERAGEIFS(C2:C9,B2:B9,A1),STDEV(A1:A9))",
    "NETWORKDAYS.INTL(A1,B1)",
    "F.DISTANCE(1)",
    'IF(A1="STDEV.S(x)","T.INV(""VAR.S(1)"")",1)',
    "'T.INV(2)'!A1+'it''s VAR.S('!B2",
    "Shots[SEC]+SEC+DAYS",
    "CLUB.GAMMA(1)+MY_SEC(2)",
  ])("leaves %s alone", (formula) => {
    expect(fileFormula(formula)).toBe(formula);
  });

  test("is undone by withoutPrefixes", () => {
    const formula = "T.TEST(A1:A9,B1:B9,2,3)+RANK.AVG(A1,A1:A9)";
    expect(fileFormula(formula)).toContain("_xlfn.");
    expect(withoutPrefixes(fileFormula(formula))).toBe(formula);
  });
});

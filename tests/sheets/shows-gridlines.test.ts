import { expect, test } from "vitest";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { showsGridlines } from "../../src/sheets/shows-gridlines.ts";
import { demoSession } from "./demo-session.ts";

test("of a session's sheets the shots, to be worked in, show their grid, and those that are read do not", () => {
  const { sheets } = comparisonWorkbook(demoSession(), NOTHING_TAKEN, "today");
  expect(sheets.filter(showsGridlines).map(({ name }) => name)).toEqual(["Shots"]);
});

import { expect, test } from "vitest";
import { SheetDraft } from "../../src/sheets/sheet-draft.ts";

// "Row height: 409 points", in the spreadsheet's published specifications and limits.
test("no row is planned higher than a spreadsheet makes one", () => {
  const draft = new SheetDraft("Long words");
  draft.height(0, 436);
  draft.height(1, 26);
  expect(draft.plan().heights.map(({ points }) => points)).toEqual([409, 26]);
});

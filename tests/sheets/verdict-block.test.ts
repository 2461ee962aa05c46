import { expect, it } from "vitest";
import { formula, SheetDraft } from "../../src/sheets/sheet-draft.ts";
import { putVerdict } from "../../src/sheets/verdict-block.ts";
import { cellAt } from "./cell-at.ts";
import { heightAt, mergedAt, styleAt } from "./looks-at.ts";

it("putVerdict(...) has a line for each sentence, warnings below, then the evidence, each as high as its words need", () => {
  const draft = new SheetDraft("Comparison");
  const words = {
    headline: "h".repeat(68),
    // Twelve columns hold 7.8 letters each: 93 in a line, and 67 of the headline.
    reasons: ["r".repeat(93), "", "s".repeat(94)],
    costs: ["It costs."],
    next: "Hit more.",
  };
  const evidence = formula("TRUE", "Worked out");
  const end = putVerdict(draft, words, ["Beware.", "w".repeat(205)], evidence, 3, 12);
  const sheet = draft.plan();
  const rows = Array.from({ length: 8 }, (_, i) => 3 + i);
  expect(rows.map((row) => cellAt(sheet, row, 0))).toEqual([
    ...[
      words.headline,
      words.reasons[0],
      words.reasons[2],
      "It costs.",
      "Hit more.",
      "Beware.",
      "w".repeat(205),
      evidence,
    ],
  ]);
  expect(rows.map((row) => styleAt(sheet, row, 11))).toEqual([
    ...["sentenceStrong", "sentence", "sentence", "sentence", "sentence", "warning", "warning", "small"],
  ]);
  // 15.5 points a line, 20 for the headline, and 2 around them.
  expect(rows.map((row) => heightAt(sheet, row))).toEqual([42, 17.5, 33, 17.5, 17.5, 17.5, 48.5, 14]);
  for (const row of rows) expect(mergedAt(sheet, row, 0)).toEqual([1, 12]);
  expect(end).toBe(11);
});

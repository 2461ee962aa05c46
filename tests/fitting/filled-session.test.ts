import { describe, expect, it } from "vitest";
import { comparisonJson } from "../../src/fitting/comparison-json.ts";
import { DEMO_FACTS, DEMO_TEXT } from "../../src/fitting/demo.ts";
import { computedWords, filledSession } from "../../src/fitting/filled-session.ts";
import { sessionOf } from "../../src/fitting/session.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

/** The demo with its carry column emptied in the first three shots. */
const gapped = DEMO_TEXT.split("\n")
  .map((line, i) =>
    i >= 1 && i <= 3
      ? line
          .split("\t")
          .map((cell, c) => (c === 17 ? "" : cell))
          .join("\t")
      : line,
  )
  .join("\n");
const session = sessionOf(readShots(gapped) as ShotTable, DEMO_FACTS);

describe("filledSession(session)", () => {
  const filled = filledSession(session);

  it("computes only what is missing and lists it", () => {
    expect([...filled.computed!.get("carry")!]).toEqual([0, 1, 2]);
    const [measured, carries] = [session, filled].map(({ table }) => table.values.get("carry")!) as [
      Float64Array,
      Float64Array,
    ];
    expect([...carries].slice(3)).toEqual([...measured].slice(3));
    // The demo's first shots carried 161.6, 162.6 and 160.8 yd; a flight model that was fitted to the rest comes near.
    [161.6, 162.6, 160.8].forEach((carry, i) => {
      expect(Math.abs(carries[i]! - carry)).toBeLessThan(4);
    });
  });

  it("leaves the session it was given as it was", () => {
    expect(session.computed).toBeUndefined();
    expect(session.table.values.get("carry")![0]).toBeNaN();
  });

  it("is told in words, in --json by row, and beside each shot on the sheet", () => {
    expect(computedWords(filled)).toEqual([expect.stringMatching(/^Carry of 3 of 24 shots is computed/)]);
    expect(comparisonJson(filled).computed).toEqual({ carry: [2, 3, 4] });
    const shots = comparisonWorkbook(filled, NOTHING_TAKEN, "now").sheets.find(
      ({ name }) => name === "Shots",
    )!;
    const remarks = shots.blocks.at(-1)!.cells.map((row) => row.at(-1));
    expect(remarks.slice(0, 4)).toEqual([
      ...Array(3).fill(expect.stringContaining("Computed, not measured: carry.")),
      null,
    ]);
  });
});

import { describe, expect, it } from "vitest";
import type { Session } from "../../src/fitting/session.ts";
import { putWindows } from "../../src/sheets/windows-block.ts";
import { cellAt } from "./cell-at.ts";
import { formatAt, mergedAt, styleAt, stylesAlong } from "./looks-at.ts";
import { formulaAt, rowAt, shownAt } from "./row-at.ts";
import { smallParts, smallSession } from "./small-session.ts";

const LAUNCH = { from: 15, to: 20, margin: 1 };
const WINDOWS = { launch: LAUNCH };

function block(session: Session = { ...smallSession(), windows: WINDOWS }) {
  const { shots, layout, draft } = smallParts(session);
  const place = putWindows(draft, session, shots, layout, 10);
  return { place, sheet: draft.plan() };
}

describe("putWindows(draft, session, shots, workings, from)", () => {
  const { place, sheet } = block();

  it("names each build over its four columns, and From and To once", () => {
    expect(cellAt(sheet, 10, 0)).toBe("Target windows");
    expect([2, 6, 10].map((column) => cellAt(sheet, 10, column))).toEqual(["A", "B", "C"]);
    expect([0, 2, 6, 10].map((column) => mergedAt(sheet, 10, column))).toEqual([
      [1, 2],
      [1, 4],
      [1, 4],
      [1, 4],
    ]);
    expect(rowAt(sheet, 11, 0, 14)).toEqual([
      ...[null, null, "From", "To", "Inside", null],
      ...[null, null, "Inside", null, null, null, "Inside", null],
    ]);
    expect(stylesAlong(sheet, 10, 15)).toEqual([
      ...["headingLeft", "headingLeft", ...Array(12).fill("headingCentre")],
      undefined,
    ]);
    expect(stylesAlong(sheet, 11, 15)).toEqual([...Array(14).fill("faint"), undefined]);
  });

  it("has the limits of a metric to type over, and each build's share inside them, both ends counted", () => {
    expect(rowAt(sheet, 12, 0, 4)).toEqual(["Launch angle", "°", 15, 20]);
    expect(stylesAlong(sheet, 12, 4)).toEqual(["label", "label", "input", "input"]);
    expect([2, 3].map((column) => formatAt(sheet, 12, column))).toEqual(["0.0", "0.0"]);
    // By hand: 18, 20 of 18, 20, 22; 16 of 16, 14; 15 of 15. The unticked 30 counts nowhere.
    expect([4, 8, 12].map((column) => shownAt(sheet, 12, column))).toEqual([2 / 3, 1 / 2, 1]);
    expect([4, 8, 12].map((column) => [styleAt(sheet, 12, column), formatAt(sheet, 12, column)])).toEqual(
      Array(3).fill(["figure", "0%"]),
    );
    expect(formulaAt(sheet, 12, 8)).toBe(
      "IF('Workings'!$C$6>0,SUMPRODUCT(('Shots'!$B$5:$B$12='Workings'!$A$6)*('Shots'!$A$5:$A$12=TRUE)*ISNUMBER('Shots'!$C$5:$C$12)*('Shots'!$C$5:$C$12>=$C$13)*('Shots'!$C$5:$C$12<=$D$13))/'Workings'!$C$6,\"\")",
    );
  });

  it("answers where the limits stand, their sum, and the next free row", () => {
    expect(place).toEqual({ end: 13, limits: { cells: "$C$13:$D$13", sum: 35 } });
  });

  it("shows no share of a build of which nothing was measured", () => {
    const session = { ...smallSession(), windows: WINDOWS };
    const { values } = session.table;
    const launch = values.get("launch")!.map((one, i) => (session.table.build[i] === "C" ? Number.NaN : one));
    const table = { ...session.table, values: new Map([...values, ["launch", launch] as const]) };
    expect(shownAt(block({ ...session, table }).sheet, 12, 12)).toBe("");
  });

  it("puts nothing where the table has no such metric or the session no such window", () => {
    for (const session of [
      { ...smallSession(), windows: {} },
      { ...smallSession(), windows: { spin: { from: 1, to: 2, margin: 1 } } },
    ]) {
      const { place: nowhere, sheet: empty } = block(session);
      expect(nowhere).toEqual({ end: 10, limits: null });
      expect([empty.blocks, empty.styles]).toEqual([[], []]);
    }
  });

  it("has a row for each metric, one below the other, in the unit shown", () => {
    const small = smallSession();
    const values = new Map([...small.table.values, ["height", small.table.values.get("launch")!] as const]);
    const windows = { launch: LAUNCH, height: { from: 10, to: 20, margin: 1 } };
    const metric = block({ ...small, windows, units: "metric", table: { ...small.table, values } });
    expect(rowAt(metric.sheet, 13, 0, 2)).toEqual(["Peak height", "m"]);
    // A foot is 0.3048 m exactly: international yard and pound agreement of 1959.
    expect(rowAt(metric.sheet, 13, 2, 2)).toEqual([expect.closeTo(3.048, 9), expect.closeTo(6.096, 9)]);
    expect(metric.place.end).toBe(14);
    expect(metric.place.limits).toEqual({ cells: "$C$13:$D$14", sum: expect.closeTo(35 + 9.144, 9) });
  });
});

import { describe, expect, it } from "vitest";
import { type Session, sessionOf } from "../../src/fitting/session.ts";
import { shotsLayout } from "../../src/sheets/shots-layout.ts";
import { shotsSheet } from "../../src/sheets/shots-sheet.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";
import { cellAt } from "./cell-at.ts";
import { formatsAlong, heightAt, stylesAlong, widthAt } from "./looks-at.ts";
import { rowAt } from "./row-at.ts";
import { smallSession } from "./small-session.ts";

const of = (lines: string[]) => sessionOf(answer(readShots(lines.join("\n"))), { title: "Bay" });
/** Everything that a table can have beside its figures. */
const full = of([
  "Build,Club,Shot,Time,Carry (yd),Spin Rate (rpm),Lust,Remark",
  "Red,7i,1,14:05,150,6000,3,",
  "Blue,7i,2,,151,,,windy",
]);
const sheetOf = (session: Session, remarks = new Map<number, string>()) =>
  shotsSheet(session, "Shots", "Shots_1", remarks);

describe("shotsSheet(session, name, tableName, remarks), cells", () => {
  const sheet = sheetOf(full, new Map([[1, "Odd."]]));

  it("are ticks, builds, texts, figures, columns of the table's own, and a remark", () => {
    expect(rowAt(sheet, 3, 0, 11)).toEqual([
      ...["Keep", "Build", "Club", "Shot", "Time", "Spin rate (rpm)", "Carry (yd)", "Lust"],
      ...["Remark", "Remark 2", null],
    ]);
    expect(rowAt(sheet, 4, 0, 11)).toEqual([
      true,
      "Red",
      "7i",
      "1",
      "14:05",
      6000,
      150,
      "3",
      null,
      null,
      null,
    ]);
    expect(rowAt(sheet, 5, 0, 11)).toEqual([
      true,
      "Blue",
      "7i",
      "2",
      null,
      null,
      151,
      null,
      "windy",
      "Odd.",
      null,
    ]);
    expect(cellAt(sheet, 6, 0)).toBeNull();
    expect(cellAt(sheet, 0, 0)).toBe("Shots");
    expect(cellAt(sheet, 1, 0)).toContain("Untick Keep");
  });

  it("are dressed as a table under headings", () => {
    expect([stylesAlong(sheet, 0, 2), stylesAlong(sheet, 1, 2)]).toEqual([
      ["title", undefined],
      ["subtitle", undefined],
    ]);
    expect(stylesAlong(sheet, 3, 11)).toEqual([
      ...[...Array(5).fill("heading"), "headingLeft", "headingLeft", ...Array(3).fill("heading"), undefined],
    ]);
    for (const row of [4, 5])
      expect(stylesAlong(sheet, row, 11)).toEqual([...Array(9).fill("plain"), "small", undefined]);
    expect(stylesAlong(sheet, 6, 11)).toEqual(Array(11).fill(undefined));
    for (const row of [4, 5]) {
      expect(formatsAlong(sheet, row, 8)).toEqual([...Array(5).fill(undefined), "0", "0.0", undefined]);
    }
    expect([2, 3, 4].map((row) => heightAt(sheet, row))).toEqual([undefined, 34, undefined]);
  });

  it("take only numbers where figures stand", () => {
    expect(sheet.validations).toEqual(
      ["Spin rate (rpm)", "Carry (yd)"].map((heading, m) => ({
        area: { row: 4, column: 5 + m, rows: 2, columns: 1 },
        kind: "number",
        least: -1e6,
        most: 1e6,
        message: expect.stringContaining(`${heading} takes a number`),
      })),
    );
  });

  it("are one native table, dimmed row by row where Keep is taken away", () => {
    const whole = { row: 4, column: 0, rows: 2, columns: 10 };
    expect(sheet.tables).toEqual([{ name: "Shots_1", area: { ...whole, row: 3, rows: 3 } }]);
    expect(sheet.conditions).toEqual([{ area: whole, formula: "$A5=FALSE", style: "dimmed" }]);
    expect(sheet.ticks).toEqual([{ row: 4, column: 0, rows: 2, columns: 1 }]);
    expect(sheet.frozen).toEqual({ rows: 4, columns: 2 });
    expect(
      sheetOf(smallSession())
        .blocks.at(-1)!
        .cells.map(([keep]) => keep),
    ).toEqual([...[true, true, true, true, true, true, false, true]]);
  });

  it("print across, headings on each page, the session's title at the foot", () => {
    expect(sheet.print).toEqual({
      ...{ landscape: true, pagesWide: 1, pagesTall: 0, titleRows: { row: 3, rows: 1 }, footer: "Bay" },
    });
  });
});

describe("shotsSheet(session, name, tableName, remarks), widths and headings", () => {
  it("give each kind of column its room, and a heading room for its button", () => {
    const sheet = sheetOf(full);
    // In two lines "Spin rate (rpm)" is 9 letters wide, "Carry (yd)" 5: 1.4 times that, and 4 for the button.
    expect(Array.from({ length: 11 }, (_, column) => widthAt(sheet, column))).toEqual([
      ...[8, 14, 10, 10, 10, 17, 11, 14, 14, 60],
      undefined,
    ]);
    const bare = sheetOf(of(["Build,Carry (yd)", "Red,150"]));
    expect(bare.widths.every(({ columns }) => columns > 0)).toBe(true);
    expect([0, 1, 2, 3, 4].map((column) => widthAt(bare, column))).toEqual([8, 14, 11, 60, undefined]);
    expect(widthAt(sheetOf(of(["Build,Total", "Red,150"])), 2)).toBe(11);
    // "Launch direction (°)" breaks after its first word: 13 letters in the second line.
    expect(widthAt(sheetOf(of(["Build,Launch direction", "Red,1"])), 2)).toBe(23);
  });

  it("fit the longest name of a build, within bounds", () => {
    const width = (letters: number) =>
      widthAt(sheetOf(of(["Build,Carry (yd)", `R,150`, `${"b".repeat(letters)},151`])), 1);
    expect([5, 11, 12, 31, 32, 40].map(width)).toEqual([14, 14, 15, 34, 34, 34]);
  });

  it("have each heading once, in any case, and none empty or endless", () => {
    const { table } = full;
    const headings = (...headers: string[]) => {
      const extras = headers.map((header) => ({ header, cells: ["", ""] }));
      const sheet = sheetOf({ ...full, table: { ...table, extras } });
      return rowAt(sheet, 3, 7, headers.length + 1);
    };
    expect(headings("BUILD", "build", "Note")).toEqual(["BUILD 2", "build 3", "Note", "Remark"]);
    expect(headings("  ", " Lust ")).toEqual(["Column 8", "Lust", "Remark"]);
    expect(headings("x".repeat(300))[0]).toBe("x".repeat(200));
  });
});

describe("shotsLayout(session, name)", () => {
  it("says where everything stands, texts before figures", () => {
    const layout = shotsLayout(full, "Shots 2");
    expect([layout.keep, layout.build]).toEqual(["'Shots 2'!$A$5:$A$6", "'Shots 2'!$B$5:$B$6"]);
    expect([layout.figures("carry"), layout.allFigures]).toEqual([
      "'Shots 2'!$G$5:$G$6",
      "'Shots 2'!$F$5:$G$6",
    ]);
    expect([layout.figure("carry", 1), layout.keepCell(1), layout.buildCell(0)]).toEqual([
      ...["'Shots 2'!$G$6", "'Shots 2'!$A$6", "'Shots 2'!$B$5"],
    ]);
    expect([layout.sheet, layout.firstRow, layout.rows]).toEqual(["Shots 2", 4, 2]);
    expect(layout.metrics.map(({ key }) => key)).toEqual(["spin", "carry"]);
    expect(shotsLayout(smallSession(), "S").figures("launch")).toBe("'S'!$C$5:$C$12");
  });
});

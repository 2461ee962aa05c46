import { describe, expect, it } from "vitest";
import type { BenchJob } from "../../src/sheets/bench-job.ts";
import { buildWorkbook } from "../../src/sheets/build-sheet.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { cellAt, findText } from "./cell-at.ts";
import { heightAt, mergedAt, styleAt, widthAt } from "./looks-at.ts";
import { smallJob, TWO_IRONS } from "./small-bench.ts";

const bookOf = (job: BenchJob) => buildWorkbook(job, NOTHING_TAKEN, "today");
const sheetOf = (job: BenchJob) => bookOf(job).sheets[0]!;
/** The lines between the head and the tolerances. */
function remarks(text: string, change: Partial<BenchJob> = {}): string[] {
  const sheet = sheetOf({ ...smallJob(text), ...change });
  const { row } = findText(sheet, "Tolerance");
  return Array.from({ length: row - 4 }, (_, i) => String(cellAt(sheet, 3 + i, 0)));
}
const club = (rows: string, target = "swingweight; D2", more = "") =>
  `target; ${target}\nshafts; 60\ngrip; 50\n${more}club; length; raw length; putter\n${rows}`;

describe("the Build sheet's head", () => {
  const sheet = sheetOf(smallJob());

  it("names the set, or else the build, over the whole width", () => {
    expect(cellAt(sheet, 0, 0)).toBe("Build sheet: A");
    expect(cellAt(sheetOf(smallJob(`set; Two irons\n${TWO_IRONS}`)), 0, 0)).toBe("Build sheet: Two irons");
    expect(
      [0, 1, 2, 3].map((row) => [mergedAt(sheet, row, 0), styleAt(sheet, row, 0), heightAt(sheet, row)]),
    ).toEqual([
      [[1, 25], "title", 28],
      [[1, 25], "subtitle", 18],
      [[1, 25], "sentenceStrong", 20],
      [[1, 25], "small", 14],
    ]);
  });

  it("tells who it is for, without gaps for what is not known", () => {
    expect(cellAt(sheet, 1, 0)).toBe("Build A · planned today");
    const build = { name: "A", profile: "mid", flex: "S", head: "cast" };
    expect(cellAt(sheetOf({ ...smallJob(), build, player: "Ann" }), 1, 0)).toBe(
      "Build A · S · mid profile · cast · Ann · planned today",
    );
  });

  it("is a workbook of one sheet and no named areas", () => {
    const { sheets, names, active } = bookOf(smallJob());
    expect([sheets.length, names, active]).toEqual([1, [], "Build"]);
  });
});

describe("the Build sheet's remarks", () => {
  it("are the warnings, higher and coloured, then what was taken, and nothing else", () => {
    const sheet = sheetOf({ ...smallJob(), warnings: ["Careful."], notes: ["Taken."] });
    expect(
      [3, 4].map((row) => [cellAt(sheet, row, 0), styleAt(sheet, row, 0), heightAt(sheet, row)]),
    ).toEqual([
      ["Careful.", "warning", 16],
      ["Taken.", "small", 14],
    ]);
    expect(remarks(TWO_IRONS)).toEqual([
      expect.stringMatching(/^All planned lengths/),
      expect.stringMatching(/^Raw shaft length was not entered for 2 of 2 clubs/),
      expect.stringMatching(/^Bore was not entered for 2 of 2 clubs/),
    ]);
  });

  it("say that lengths conform from 18 to 48 inches, both counted, and for putters above", () => {
    // Source: Equipment Rules of the R&A and the USGA, Part 2, Section 1c.
    const says = (rows: string) => remarks(club(rows)).some((line) => line.startsWith("All planned lengths"));
    expect(says("A; 18; 40\nB; 48; 60")).toBe(true);
    expect(says("A; 37; 40\nB; 48.1; 60")).toBe(false);
    expect(says("A; 17.9; 40\nB; 37; 60")).toBe(false);
    expect(says("A; 37; 40\nB; 50; 60; yes")).toBe(true);
    expect(says("A; 17.9; 40; yes\nB; 37; 60")).toBe(false);
  });

  it("count the clubs whose raw shafts were not measured", () => {
    const uncut = (rows: string) => remarks(club(rows)).filter((line) => line.startsWith("Raw shaft length"));
    expect(uncut("A; 37; 40\nB; 37; 40")).toEqual([]);
    expect(uncut("A; 37; 40\nB; 37;")[0]).toContain("for 1 of 2 clubs");
  });

  it("count the clubs whose cut length reaches to the sole for want of a bore", () => {
    const blind = (rows: string) =>
      remarks(`target; swingweight; D2\nshafts; 60\ngrip; 50\nclub; length; bore\n${rows}`).filter((line) =>
        line.startsWith("Bore was not entered"),
      );
    expect(blind("A; 37; 1\nB; 36.5; 0")).toEqual([]);
    expect(blind("A; 37; 1\nB; 36.5;")[0]).toMatch(/for 1 of 2 clubs.* Dry-fit the head/);
  });

  it("tell of one moment of inertia only where the set is built to one", () => {
    const told = (target: string) =>
      remarks(club("7; 37; 40\n8; 36.5; 40", target)).filter((line) =>
        line.startsWith("Built to one moment"),
      );
    expect(told("swingweight; D2")).toEqual([]);
    expect(told("inertia; 2650")[0]).toContain("2650 kg cm2");
    expect(told("inertia of; 7; D2")).toHaveLength(1);
    const own =
      "target; inertia; 2650\nshafts; 105\ngrip; 50\nclub; length; swingweight\n7; 37; D2\n8; 36.5;\n";
    expect(remarks(own).filter((line) => line.startsWith("Built to one moment"))).toEqual([]);
  });
});

describe("the Build sheet's foot and page", () => {
  it("numbers the steps below everything, a free row above them", () => {
    const sheet = sheetOf(smallJob());
    const { row } = findText(sheet, "Steps and cautions");
    // Three remarks from row 3, a free row, then 11 rows down to what to do; the parts list takes 5 rows.
    expect(row).toBe(24);
    expect([mergedAt(sheet, row, 0), styleAt(sheet, row, 0)]).toEqual([[1, 25], "headingLeft"]);
    expect(
      Array.from({ length: 11 }, (_, i) => /^\d+\. /.exec(String(cellAt(sheet, row + 1 + i, 0)))?.[0]),
    ).toEqual([...["1. ", "2. ", "3. ", "4. ", "5. ", "6. ", "7. ", "8. ", "9. ", "10. "], undefined]);
    expect([styleAt(sheet, row + 1, 24), heightAt(sheet, row + 1), mergedAt(sheet, row + 10, 0)]).toEqual([
      ...["sentence", 15, [1, 25]],
    ]);
  });

  it("keeps the steps clear of a long set", () => {
    const rows = Array.from({ length: 12 }, (_, i) => `${i + 1}; 37; 40`).join("\n");
    const sheet = sheetOf(smallJob(club(rows)));
    const first = findText(sheet, "To adjust").row + 1;
    expect(findText(sheet, "Steps and cautions").row).toBe(first + 12 + 1);
  });

  it("prints across, all columns on one page, with who it is for at the foot", () => {
    const sheet = sheetOf(smallJob());
    expect(sheet.print).toEqual({
      landscape: true,
      area: { row: 0, column: 0, rows: 35, columns: 25 },
      pagesWide: 1,
      pagesTall: 1,
      footer: "Build A · planned today",
    });
  });

  it("prints a bag of fourteen on one page, and lets a longer list run on, to stay readable", () => {
    // Source: Rules of Golf 4.1b, fourteen clubs at most.
    const tall = (count: number) => {
      const rows = Array.from({ length: count }, (_, i) => `${i + 1}; 37; 40`).join("\n");
      return sheetOf(smallJob(club(rows))).print!.pagesTall;
    };
    expect([tall(14), tall(15)]).toEqual([1, 0]);
  });

  it("gives more room to labels and to what is typed in", () => {
    const sheet = sheetOf(smallJob());
    expect(Array.from({ length: 26 }, (_, column) => widthAt(sheet, column))).toEqual([
      13,
      ...Array(6).fill([7.3, 10, 7.3, 7.3]).flat(),
      undefined,
    ]);
  });

  it("stands parts beside what to do, and what moves swingweight beside the parts", () => {
    const sheet = sheetOf(smallJob());
    const { row } = findText(sheet, "To adjust");
    expect(findText(sheet, "Parts list")).toEqual({ row, column: 13 });
    expect(findText(sheet, "What moves swingweight on club 8")).toEqual({ row, column: 19 });
  });
});

import { describe, expect, it } from "vitest";
import { cellName } from "../../src/sheets/a1.ts";
import { benchJob } from "../../src/sheets/bench-job.ts";
import { benchWorkbook } from "../../src/sheets/bench-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import type { CellValue, SheetPlan } from "../../src/sheets/plan.ts";
import { answer, refusal } from "../club/answer.ts";
import { SET_TEXT } from "./bench-set.ts";
import { cellAt, findText } from "./cell-at.ts";
import { demoSession } from "./demo-session.ts";

const CHOSEN = "105 g mid-launch";
const MADE = "2026-11-25 10:00 UTC";

function sheetOf(setText: string | null): SheetPlan {
  return answer(benchWorkbook(demoSession(), CHOSEN, setText, NOTHING_TAKEN, MADE)).sheets[0]!;
}

function cellsOf(sheet: SheetPlan): CellValue[] {
  return sheet.blocks.flatMap(({ cells }) => cells.flat());
}

function shown(cell: CellValue): string | number | boolean | null {
  return typeof cell === "object" && cell !== null ? cell.value : cell;
}

/** The cells below a heading, as many as there are clubs. */
function below(sheet: SheetPlan, heading: string, clubs = 6): CellValue[] {
  const { row, column } = findText(sheet, heading);
  return Array.from({ length: clubs }, (_, i) => shown(cellAt(sheet, row + 1 + i, column)));
}

describe("the Build sheet", () => {
  const plain = sheetOf(null);
  const full = sheetOf(SET_TEXT);

  it("takes a name that is free and shows itself first", () => {
    const taken = { sheets: ["build", "Build 2"], names: [] };
    const plan = answer(benchWorkbook(demoSession(), CHOSEN, null, taken, MADE));
    expect(plan.sheets.map(({ name }) => name)).toEqual(["Build 3"]);
    expect(plan.active).toBe("Build 3");
  });

  it("finds the chosen build in any case and tells who it is for", () => {
    const plan = answer(benchWorkbook(demoSession(), " 105 G MID-launch ", null, NOTHING_TAKEN, MADE));
    const texts = cellsOf(plan.sheets[0]!).filter((cell) => typeof cell === "string");
    expect(texts).toContain(
      `Build ${CHOSEN} · mid profile · Rowan Tilsley (invented) · 2026-11-25 · Harrow Lane, bay 2 (invented) · planned ${MADE}`,
    );
  });

  it("has a row a club with the plan's own figures", () => {
    const { plan } = answer(benchJob(demoSession(), CHOSEN, SET_TEXT));
    expect(below(full, "Cut and build")).toEqual(["5", "6", "7", "8", "9", "PW"]);
    expect(below(full, "Head needed (g)")).toEqual(plan.clubs.map(({ headWeight }) => headWeight));
    expect(below(full, "Tip trim (in)")).toEqual([0, 0.5, 1, 1.5, 2, 2.5]);
    // By arithmetic: raw 41, cut to the length less half an inch of bore; the rest comes off the butt.
    expect(below(full, "Butt trim (in)")).toEqual([3.5, 3.5, 3.5, 3.5, 3.5, 3.5]);
    expect(below(full, "Bend loft (°)")).toEqual([-1, -0.5, -3, 0, 0.5, 0]);
    // A degree of loft takes a degree of bounce with it (common practice).
    expect(below(full, "Bounce after (°)")).toEqual([4, 5, 3, 7, 7.5, 8]);
  });

  it("leaves out columns that no club has anything for", () => {
    expect(() => findText(plain, "Head on hand (g)")).toThrow();
    expect(() => findText(plain, "Shaft no. in bin")).toThrow();
    expect(below(full, "Head on hand (g)")).toEqual([245, 252, 258, 275, 275, 285]);
  });

  it("gives the shafts of the bin out, each once", () => {
    // By trying: in order of weight 102, 105.5, 107.2, 110.4, 116, 118 for 102 to 117 has the least squares.
    expect(below(full, "Shaft no. in bin")).toEqual([4, 5, 1, 3, 7, 8]);
    expect(below(full, "Its weight (g)")).toEqual([102, 105.5, 107.2, 110.4, 116, 118]);
  });

  it("leaves every measured cell empty, dressed as one to type in, and without a mark", () => {
    const { row, column } = findText(plain, "Target");
    for (let figure = 0; figure < 6; figure++) {
      const first = column + 4 * figure;
      const inputs = plain.styles.find(
        ({ area, style }) => style === "input" && area.row === row + 1 && area.column === first + 1,
      );
      expect(inputs?.area.rows).toBe(6);
      for (let club = 1; club <= 6; club++) {
        expect(cellAt(plain, row + club, first + 1)).toBeNull();
        expect(shown(cellAt(plain, row + club, first + 2))).toBe("");
        expect(shown(cellAt(plain, row + club, first + 3))).toBe("");
      }
    }
  });

  it("puts tolerances at the top, the set file's before the usual ones, and the marks read them", () => {
    const { row, column } = findText(full, "Length ±");
    expect(cellAt(full, row, column + 2)).toBe(0.125);
    expect(cellAt(plain, findText(plain, "Length ±").row, column + 2)).toBe(0.0625);
    const head = findText(full, "Target");
    const mark = cellAt(full, head.row + 1, head.column + 4 + 3);
    expect(mark).toHaveProperty("formula", expect.stringContaining(`<=${cellName(row, column + 2, "both")}`));
    expect(row).toBeLessThan(head.row);
  });

  it("colours pass and adjust", () => {
    const looks = plain.conditions.map(({ formula, style }) => [/"(\w+)"/.exec(formula)![1], style]);
    expect(looks).toEqual(
      Array.from({ length: 6 }, () => [
        ["pass", "good"],
        ["adjust", "bad"],
      ]).flat(),
    );
  });

  it("names only functions that a spreadsheet of 2007 knows", () => {
    const known =
      "IF ISNUMBER AND OR ABS ROUND FIND MID LEFT LEN UPPER TRIM SUBSTITUTE IFERROR NA SUM COUNTIF";
    const used = new Set(
      cellsOf(full).flatMap((cell) =>
        typeof cell === "object" && cell !== null
          ? [...cell.formula.replaceAll(/"[^"]*"/g, "").matchAll(/([A-Z.]+)\(/g)].map((match) => match[1]!)
          : [],
      ),
    );
    expect([...used].filter((name) => !known.split(" ").includes(name))).toEqual([]);
    expect(used.size).toBeGreaterThan(10);
  });

  it("shows every warning of the plan and of the bin", () => {
    const { warnings } = answer(benchJob(demoSession(), CHOSEN, SET_TEXT));
    expect(warnings).toHaveLength(5);
    for (const warning of warnings) {
      const { row } = findText(full, warning);
      expect(full.styles).toContainEqual(
        expect.objectContaining({ style: "warning", area: expect.objectContaining({ row }) }),
      );
    }
  });

  it("says that the lengths are within the Rules only where all of them are", () => {
    const says = (sheet: SheetPlan) =>
      cellsOf(sheet).some((cell) => typeof cell === "string" && cell.startsWith("All planned lengths"));
    expect(says(plain)).toBe(true);
    const long = sheetOf("target; swingweight; D2\nshafts; 60\ngrip; 50\nclub; length\nDriver; 48.5\n");
    expect(says(long)).toBe(false);
    // Source: Equipment Rules of the R&A and the USGA, Part 2, Section 1c: 48 inches at most but for putters.
    findText(
      long,
      "Club Driver: 48.5 in is over 48 in, the most that a club other than a putter may have (Equipment Rules, Part 2, Section 1c).",
    );
  });

  it("adds its parts up with native totals", () => {
    const { row, column } = findText(full, "Total");
    const { plan, request } = answer(benchJob(demoSession(), CHOSEN, SET_TEXT));
    // Raw shafts as bought, the rest as built: heads, 6 x 50 g of grip, 6 x 2 g of ferrule, 6 x 2 g of epoxy.
    const heads = plan.clubs.reduce((sum, { headWeight }) => sum + headWeight, 0);
    const grams = cellAt(full, row, column + 4);
    expect(shown(grams)).toBeCloseTo(heads + 657 + 300 + 12 + 12, 9);
    expect(grams).toHaveProperty("formula", expect.stringMatching(/^SUM\(/));
    expect(shown(cellAt(full, row, column + 3))).toBe(5 * request.clubs.length);
  });

  it("calls the shafts by the build where they weigh what it says, else by what they weigh", () => {
    findText(plain, "Raw shaft: 105 g mid-launch");
    findText(full, "Raw shaft: 102 to 117 g, mid");
  });

  it("shows the sensitivities of the club that the target steps from", () => {
    const set =
      "target; inertia of; 8; D2\nshafts; 100; 2; 7\ngrip; 50\nclub; length\n7; 37\n8; 36.5\n9; 36\n";
    findText(sheetOf(set), "What moves swingweight on club 8");
    findText(sheetOf(set.replace("inertia of; 8; D2", "inertia; 2650")), "What moves swingweight on club 7");
  });

  it("says of a set of one inertia how to check it", () => {
    const set = "target; inertia; 2650\nshafts; 100\ngrip; 50\nclub; length\n7; 37\n";
    findText(
      sheetOf(set),
      "Built to one moment of inertia, 2650 kg cm2 about the butt; the swingweights follow from it. To check it, hang the club at its butt: grams × balance point in inches × seconds of a swing squared × 0.06309, or CLUB.INERTIA.",
    );
  });

  it("prints the model's own sensitivities beside the rules of thumb, and they agree within a third", () => {
    const rows = ["0.5 in more length", "2 g more head", "5 g more grip", "9 g more shaft"];
    // Common practice, no source: 3, 1, -1 and 1 points.
    const thumb = [3, 1, -1, 1];
    rows.forEach((text, i) => {
      const { row, column } = findText(full, text);
      expect(cellAt(full, row, column + 3)).toBe(thumb[i]);
      const model = cellAt(full, row, column + 4) as number;
      expect(Math.abs(model / thumb[i]! - 1)).toBeLessThan(1 / 3);
    });
    // By arithmetic on the 7: 2 g over 23 inches, in ounces, over 1.75 a point.
    const { row, column } = findText(full, "2 g more head");
    expect(cellAt(full, row, column + 4)).toBeCloseTo((2 * 23) / 28.349523125 / 1.75, 9);
  });

  it("gives the grams of head and of butt that make a point, from each club's own model", () => {
    const { row, column } = findText(plain, "Head, g a point");
    // By arithmetic: 1.75 inch-ounces over the arm from the fulcrum at 14 in to the club's end, or to its butt.
    expect(cellAt(plain, row + 1, column)).toBeCloseTo((1.75 * 28.349523125) / (38 - 14), 9);
    expect(cellAt(plain, row + 1, column + 1)).toBeCloseTo((-1.75 * 28.349523125) / 14, 9);
  });

  it.each([
    "makers' limits",
    "local codes",
    "licensed practice",
    "eye protection",
    "dust",
    "heat",
    "solvent",
    "epoxy",
    "maker's sheet",
    "Cast heads",
    "Measure twice",
  ])("warns of: %s", (words) => {
    expect(cellsOf(plain).some((cell) => typeof cell === "string" && cell.includes(words))).toBe(true);
  });

  it("puts the line on makers, codes and practice before everything but who and what", () => {
    expect(findText(plain, cellAt(plain, 2, 0) as string).row).toBe(2);
    expect(cellAt(plain, 2, 0)).toContain("licensed practice come first");
  });

  it("prints all of itself on one page", () => {
    for (const sheet of [plain, full]) {
      const { print } = sheet;
      expect([print!.pagesWide, print!.pagesTall]).toEqual([1, 1]);
      const paper = print!.area!;
      for (const { row, column, cells } of sheet.blocks) {
        expect(row + cells.length).toBeLessThanOrEqual(paper.rows);
        expect(column + cells[0]!.length).toBeLessThanOrEqual(paper.columns);
      }
    }
  });

  it("puts no cell into two blocks and merges no cell twice", () => {
    for (const { blocks, merges } of [plain, full]) {
      const cells = blocks.flatMap(({ row, column, cells: lines }) =>
        lines.flatMap((line, i) => line.map((_, j) => cellName(row + i, column + j))),
      );
      expect(new Set(cells).size).toBe(cells.length);
      const merged = merges.flatMap(({ row, column, columns }) =>
        Array.from({ length: columns }, (_, j) => cellName(row, column + j)),
      );
      expect(new Set(merged).size).toBe(merged.length);
    }
  });

  it("holds a club beyond the scale, whose swingweight it cannot check", () => {
    const set = "target; inertia; 9000\nshafts; 60\ngrip; 50\nclub; length\nDriver; 45\n";
    const sheet = sheetOf(set);
    expect(below(sheet, "Swing-weight", 1)).toEqual(["beyond"]);
    const { row, column } = findText(sheet, "Swingweight, points");
    expect(cellAt(sheet, row + 2, column)).toBeNull();
  });
});

describe("what no bench can build is said in one sentence", () => {
  const refused = (chosen: string, set: string | null) =>
    refusal(benchWorkbook(demoSession(), chosen, set, NOTHING_TAKEN, MADE));

  it("a build that is not there names those that are", () => {
    expect(refused("130 g", null)).toBe(
      '"130 g" is not among the builds; it should be one of "95 g high-launch", "105 g mid-launch", "115 g mid-launch", "120 g low-launch".',
    );
  });

  it("a head that would weigh less than nothing", () => {
    const set = "target; swingweight; A0\nshafts; 600\ngrip; 20\nclub; length\n7; 45\n";
    expect(refused(CHOSEN, set)).toMatch(/^Club 7: Without head the club has .* less than none/);
  });

  it("more clubs than shafts in the bin", () => {
    const set = "target; swingweight; D2\nshafts; 105\ngrip; 50\nbin; 105\nclub; length\n7; 37\n8; 36.5\n";
    expect(refused(CHOSEN, set)).toBe("bin has 1 shaft for 2 clubs; 1 more is needed.");
  });

  it("a raw shaft too short for its cuts", () => {
    const set =
      "target; swingweight; D2\nshafts; 105\ngrip; 50\nclub; length; raw length; tip trim\n7; 37; 37; 1\n";
    expect(refused(CHOSEN, set)).toContain("Club 7: The raw shaft is 37 in, too short for 1 in off the tip");
  });

  it("a set file that is none", () => {
    expect(refused(CHOSEN, "hello")).toContain("no row of headings");
  });
});

import { describe, expect, it } from "vitest";
import { outlierWords } from "../../src/fitting/outlier-words.ts";
import type { Session } from "../../src/fitting/session.ts";
import { areaName } from "../../src/sheets/a1.ts";
import { benchJob } from "../../src/sheets/bench-job.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN, type Taken } from "../../src/sheets/free-names.ts";
import type { Area, CellValue, FormulaCell, SheetPlan } from "../../src/sheets/plan.ts";
import { sessionWorkbook } from "../../src/sheets/session-workbook.ts";
import { METRICS } from "../../src/shots/metrics.ts";
import { answer } from "../club/answer.ts";
import { SET_TEXT } from "./bench-set.ts";
import { cellAt, findText } from "./cell-at.ts";
import { demoSession } from "./demo-session.ts";
import { FUNCTIONS_OF_2007, functionsIn } from "./functions-of-2007.ts";
import { ODD_NAMES, oddSession } from "./odd-session.ts";

const MADE = "2026-11-25 10:00 UTC";
const planOf = (session: Session, taken: Taken = NOTHING_TAKEN) => comparisonWorkbook(session, taken, MADE);
const sheetOf = (session: Session, name: string) =>
  planOf(session).sheets.find((sheet) => sheet.name === name)!;

function cellsOf(sheet: SheetPlan): CellValue[] {
  return sheet.blocks.flatMap(({ cells }) => cells.flat());
}

function formulasOf(sheet: SheetPlan): FormulaCell[] {
  return cellsOf(sheet).filter((cell) => typeof cell === "object" && cell !== null);
}

/** Cells that stand in more than one of these areas. */
function overlaps(areas: readonly Area[]): string[] {
  const seen = new Set<string>();
  return areas.flatMap(({ row, column, rows, columns }) => {
    const twice: string[] = [];
    for (let r = row; r < row + rows; r++) {
      for (let c = column; c < column + columns; c++) {
        const place = areaName({ row: r, column: c, rows: 1, columns: 1 });
        if (seen.has(place)) twice.push(place);
        seen.add(place);
      }
    }
    return twice;
  });
}

const SESSIONS: [string, Session][] = [
  ["the demo session", demoSession()],
  ["a table with odd habits", oddSession()],
  ["the demo session in metres", { ...demoSession(), units: "metric" }],
];

describe.each(SESSIONS)("the comparison workbook of %s", (_, session) => {
  const { sheets, active } = planOf(session);

  it("is Comparison, Player, Shots and, out of sight, Workings, and shows Comparison first", () => {
    expect(sheets.map(({ name, hidden }) => [name, hidden])).toEqual([
      ["Comparison", false],
      ["Player", false],
      ["Shots", false],
      ["Workings", true],
    ]);
    expect(active).toBe("Comparison");
  });

  it("lays its cells in rectangles of which none covers another", () => {
    for (const { name, blocks } of sheets) {
      for (const { cells } of blocks) expect(new Set(cells.map((line) => line.length)).size).toBe(1);
      const areas = blocks.map(({ row, column, cells }) => ({
        ...{ row, column, rows: cells.length, columns: cells[0]!.length },
      }));
      expect(overlaps(areas), name).toEqual([]);
    }
  });

  it("merges no cell twice, hides no cell under a merged one, and lays charts beside each other", () => {
    for (const sheet of sheets) {
      expect(overlaps(sheet.merges)).toEqual([]);
      expect(overlaps(sheet.charts.map(({ area }) => area))).toEqual([]);
      for (const { row, column, rows, columns } of sheet.merges) {
        for (let r = row; r < row + rows; r++) {
          for (let c = column; c < column + columns; c++)
            if (r > row || c > column) expect(cellAt(sheet, r, c)).toBeNull();
        }
      }
    }
  });

  it("calls only functions that a spreadsheet of 2007 knows, so that none shows #NAME?", () => {
    const called = new Set(
      sheets.flatMap((sheet) => [
        ...formulasOf(sheet).flatMap(({ formula }) => functionsIn(formula)),
        ...sheet.conditions.flatMap(({ formula }) => functionsIn(formula)),
      ]),
    );
    expect(called.size).toBeGreaterThan(5);
    expect([...called].filter((name) => !FUNCTIONS_OF_2007.has(name))).toEqual([]);
  });

  it("keeps no error value and no odd number as an answer, and no formula of more than 8192 letters", () => {
    for (const { formula, value } of sheets.flatMap(formulasOf)) {
      if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
      else expect(String(value)).not.toMatch(/^#|NaN|undefined|null/);
      expect(formula.length).toBeLessThanOrEqual(8192);
      expect(formula).not.toMatch(/^=/);
    }
  });

  it("names only sheets of its own in its formulas and charts", () => {
    const names = new Set(sheets.map(({ name }) => name));
    for (const { formula } of sheets.flatMap(formulasOf)) {
      const outside = formula.replace(/"(""|[^"])*"/g, "");
      for (const [, name] of outside.matchAll(/'((?:''|[^'])+)'!/g)) expect(names).toContain(name);
    }
    for (const { x, y } of sheets.flatMap(({ charts }) => charts.flatMap(({ series }) => series))) {
      expect(names).toContain(x.sheet);
      expect(names).toContain(y.sheet);
    }
  });
});

it("warns on the Comparison sheet of a shot that lies far from the rest", () => {
  const session = demoSession();
  const [warning] = outlierWords(session);
  expect(warning).toContain("far from the rest");
  expect(cellsOf(sheetOf(session, "Comparison"))).toContain(warning);
});

// What the comparison says of itself must hold for every sheet that is made: none calls a function of the add-in.
it("says on the sheet that it calculates without the add-in, and so do all sheets", () => {
  const session = demoSession();
  const job = answer(benchJob(session, "105 g mid-launch", SET_TEXT));
  const plan = sessionWorkbook(session, job, MADE);
  const [comparison, build] = ["Comparison", "Build"].map((name) =>
    plan.sheets.find((sheet) => sheet.name === name),
  );
  const textOf = (sheet: SheetPlan) =>
    cellsOf(sheet)
      .filter((cell) => typeof cell === "string")
      .join("\n");
  expect(textOf(comparison!)).toContain("this workbook calculates without the add-in too");
  expect(textOf(build!)).toContain("with or without the add-in");
  const formulas = plan.sheets.flatMap(formulasOf).map(({ formula }) => formula);
  const conditions = plan.sheets.flatMap((sheet) => sheet.conditions.map(({ formula }) => formula));
  expect(formulas.length).toBeGreaterThan(1000);
  expect([...formulas, ...conditions].filter((formula) => /\bCLUB\./i.test(formula))).toEqual([]);
});

describe("the Shots sheet", () => {
  const shots = sheetOf(demoSession(), "Shots");
  const heading = findText(shots, "Keep");
  const size = demoSession().table.size;

  it("is a native table, headings kept in view, each heading once", () => {
    const [{ area, name }] = shots.tables as [(typeof shots.tables)[number]];
    expect(name).toBe("Shots");
    expect([area.row, area.column, area.rows]).toEqual([heading.row, 0, size + 1]);
    expect(shots.frozen).toEqual({ rows: heading.row + 1, columns: 2 });
    const headings = Array.from({ length: area.columns }, (_, c) => cellAt(shots, area.row, area.column + c));
    expect(headings.every((one) => typeof one === "string" && one !== "")).toBe(true);
    expect(new Set(headings.map((one) => String(one).toLowerCase())).size).toBe(headings.length);
  });

  it("has a tick for each shot, which dims the row when it is taken away", () => {
    expect(shots.ticks).toEqual([{ row: heading.row + 1, column: 0, rows: size, columns: 1 }]);
    for (let i = 0; i < size; i++) expect(cellAt(shots, heading.row + 1 + i, 0)).toBe(true);
    expect(shots.conditions).toMatchObject([{ formula: "$A5=FALSE", style: "dimmed" }]);
  });

  it("shows figures to the digits they carry, and takes only numbers in their place", () => {
    const { row, column } = findText(shots, "Carry (yd)");
    const format = shots.formats.find(({ area }) => area.column === column && area.row === row + 1);
    expect(format).toMatchObject({ format: "0.0", area: { rows: size } });
    expect(shots.validations).toContainEqual(
      expect.objectContaining({ kind: "number", area: expect.objectContaining({ column }) }),
    );
  });

  it("says beside a shot that contradicts the rest what is odd about it, and leaves it ticked", () => {
    const { column } = findText(shots, "Remark");
    const remarks = Array.from({ length: size }, (_, i) => cellAt(shots, heading.row + 1 + i, column));
    // The demo's seventeenth shot was hit thin: 103.5 mph of ball speed among 114 to 116.
    expect(String(remarks[16])).toContain("Ball speed 103.5 mph lies far below");
    expect(cellAt(shots, heading.row + 17, 0)).toBe(true);
  });

  it("keeps names and notes as text, whatever they look like", () => {
    const odd = sheetOf(oddSession(), "Shots");
    const texts = cellsOf(odd).filter((cell) => typeof cell === "string");
    expect(texts).toEqual(expect.arrayContaining([...ODD_NAMES, "+1+1", "@x", "-2+3", '=HYPERLINK("x")']));
  });
});

describe("the Comparison sheet", () => {
  const comparison = sheetOf(demoSession(), "Comparison");

  it("opens with title, player, date and place, then plain sentences", () => {
    expect(cellAt(comparison, 0, 0)).toBe("7-iron fitting (invented demo)");
    for (const part of ["Rowan Tilsley (invented)", "2026-11-25", "Harrow Lane, bay 2 (invented)"])
      expect(cellAt(comparison, 1, 0)).toContain(part);
    expect(cellAt(comparison, 3, 0)).toMatch(/^[A-Z0-9].*\.$/);
  });

  it("has the metrics in their groups, builds side by side, mean and spread of each and its change against the baseline", () => {
    const groups = ["Delivery", "Launch", "Flight", "Group"];
    const rows = groups.map(
      (group) =>
        comparison.blocks.find(({ cells }) => String(cells[0]![0]).startsWith(group))?.row ?? Number.NaN,
    );
    expect(rows).toEqual([...rows].sort((a, b) => a - b));
    const { row } = findText(comparison, "Mean");
    demoSession().builds.forEach(({ name }, b) => {
      const first = 2 + 4 * b;
      const baseline = name === demoSession().baseline;
      expect(cellAt(comparison, row - 1, first)).toBe(baseline ? `${name} (baseline)` : name);
      const headings = ["Mean", "SD", ...(baseline ? [null, null] : ["Change", "± 95 %"])];
      expect([0, 1, 2, 3].map((c) => cellAt(comparison, row, first + c))).toEqual(headings);
    });
    const known = METRICS.filter(({ key }) => demoSession().table.values.has(key));
    for (const { label } of known) expect(() => findText(comparison, label)).not.toThrow();
  });

  it("has every average, spread and difference as a formula, none as a bare figure", () => {
    const from = findText(comparison, "Mean").row;
    const to = findText(comparison, "Target windows").row;
    const figures = comparison.blocks
      .filter(({ row }) => row > from && row < to)
      .flatMap(({ cells }) => cells.flat());
    expect(figures.length).toBeGreaterThan(300);
    expect(figures.filter((cell) => typeof cell === "number")).toEqual([]);
    expect(formulasOf(comparison).length).toBeGreaterThan(250);
  });

  it("has a chart of carry against offline by build and one of carry with its limits", () => {
    const chart = (title: RegExp) =>
      comparison.charts.find(
        ({ kind, x, y }) => kind === "scatter" && title.test(`${x.title} / ${y.title}`),
      )!;
    const group = chart(/offline.* \/ carry/i);
    const limits = chart(/^ \/ carry/i);
    for (const { name } of demoSession().builds) {
      expect(group.series.map((one) => one.name)).toContain(name);
      expect(limits.series.map((one) => one.name).join()).toContain(name);
    }
    for (const { alt } of comparison.charts) expect(alt.length).toBeGreaterThan(20);
  });

  it("prints on one page, all of it", () => {
    const { print, blocks } = comparison;
    expect(print).toMatchObject({ pagesWide: 1, pagesTall: 1, area: { row: 0, column: 0 } });
    const last = Math.max(...blocks.map(({ row, cells }) => row + cells.length));
    expect(print!.area!.rows).toBeGreaterThanOrEqual(last);
  });

  it("of a single build has no differences to show", () => {
    const { table, ...facts } = demoSession();
    const one = table.build[0]!;
    const only = { ...facts, table: { ...table, build: table.build.map(() => one) } };
    const sheet = sheetOf({ ...only, builds: facts.builds.slice(0, 1), baseline: one }, "Comparison");
    const { row, column } = findText(sheet, "Mean");
    expect(findText(sheet, "Carry").row).toBeGreaterThan(row);
    const changes = Array.from({ length: 20 }, (_, i) => cellAt(sheet, row + 1 + i, column + 2));
    expect(changes.filter((cell) => cell !== null)).toEqual([]);
  });
});

describe("names in a workbook that has them already", () => {
  it("are the next free ones, in the formulas as well, and nothing of the user's is named twice", () => {
    const taken = { sheets: ["comparison", "SHOTS", "Shots 2"], names: ["shots"] };
    const { sheets, active } = planOf(demoSession(), taken);
    expect(sheets.map(({ name }) => name)).toEqual(["Comparison 2", "Player", "Shots 3", "Workings"]);
    expect(active).toBe("Comparison 2");
    expect(sheets[2]!.tables[0]!.name).toBe("Shots_2");
    const formulas = sheets.flatMap(formulasOf).map(({ formula }) => formula);
    expect(formulas.some((formula) => formula.includes("'Shots 3'!"))).toBe(true);
    expect(formulas.some((formula) => formula.includes("'Shots'!"))).toBe(false);
  });
});

describe("the words of a place with a decimal comma", () => {
  it("are on the Comparison sheet, the player's page and beside the shots, and names stay as they are", () => {
    const plan = planOf({ ...demoSession(), decimalMark: ",", units: "metric" });
    const sentences = (name: string) =>
      cellsOf(plan.sheets.find((sheet) => sheet.name === name)!).filter(
        (cell): cell is string => typeof cell === "string" && cell.split(" ").length > 4,
      );
    for (const name of ["Comparison", "Player", "Shots"]) {
      expect(sentences(name).join("\n"), name).not.toMatch(/\d\.\d/);
    }
    for (const name of ["Comparison", "Shots"]) expect(sentences(name).join("\n"), name).toMatch(/\d,\d/);
  });
});

describe("the player's page of the workbook", () => {
  const { sheets, names } = planOf(demoSession());
  const player = sheets[1]!;

  it("follows the evidence line of the Comparison sheet", () => {
    const evidence = formulasOf(sheets[0]!).find(({ value }) => String(value).startsWith("Worked out"))!;
    const place = sheets[0]!.blocks.find(({ cells }) => cells[0]![0] === evidence)!;
    expect(formulasOf(player).at(-1)).toEqual({
      formula: `'Comparison'!${areaName({ row: place.row, column: 0, rows: 1, columns: 1 }, "both")}`,
      value: evidence.value,
    });
    expect(evidence.value).toContain(MADE);
  });

  it("shows the pictures that a player follows, and no other", () => {
    expect(sheets[0]!.charts.length).toBeGreaterThan(3);
    expect(player.charts.map(({ name }) => name)).toEqual(["Chance of being best", "Where the shots landed"]);
  });

  it("goes without chances while there is no verdict", () => {
    const { table, ...facts } = demoSession();
    const build = table.build.map(() => table.build[0]!);
    const alone = {
      ...facts,
      table: { ...table, build },
      builds: facts.builds.slice(0, 1),
      baseline: build[0]!,
    };
    expect(planOf(alone).sheets[1]!.charts.map(({ name }) => name)).toEqual(["Where the shots landed"]);
  });

  it("leaves the workbook without named areas", () => {
    expect(names).toEqual([]);
  });
});

describe("the workbook of a whole session", () => {
  it("is the comparison alone where no build was chosen, and has its Build sheet behind it else", () => {
    expect(sessionWorkbook(demoSession(), null, MADE).sheets.map(({ name }) => name)).toEqual([
      ...["Comparison", "Player", "Shots", "Workings"],
    ]);
    const job = answer(benchJob(demoSession(), "105 g mid-launch", SET_TEXT));
    const plan = sessionWorkbook(demoSession(), job, MADE);
    expect(plan.sheets.map(({ name }) => name)).toEqual([
      "Comparison",
      "Player",
      "Shots",
      "Workings",
      "Build",
    ]);
    expect(plan.active).toBe("Comparison");
  });
});

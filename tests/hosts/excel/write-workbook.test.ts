import { describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import type { SheetPlan, WorkbookPlan } from "../../../src/sheets/plan.ts";
import { contentsOfPlan } from "../../contents-of-plan.ts";
import { contentsOfOfficeHost } from "../../office-host/contents-of-office-host.ts";
import { removeNewerMembers } from "../../office-host/newer-members.ts";
import { officeHost } from "../../office-host/office-host.ts";
import { watchMembers } from "../../office-host/stray-members.ts";
import { samplePlan } from "../../sheets/sample-plan.ts";
import { comparableContents } from "./comparable-contents.ts";

const expected = comparableContents(contentsOfPlan(samplePlan()));
const isNew = (name: string) => name !== "Sheet1";
const SIDE_BY_SIDE = "TRANSPOSE('Shots & more'!$D$2:$D$6)";
const FILLED = ["B13", "C13", "D13", "E13", "F13"];
const partOf = (i: number) => `INDEX(INDEX(${SIDE_BY_SIDE},0,0),1,${i + 1})`;
const NO_CHART_TEXT = "The spreadsheet lets no add-in describe a chart for those who do not see it.";
const NO_SPILLS =
  "This spreadsheet fills no cells beside a formula; each of those cells has a formula of its own.";
const NO_BOXES = "This spreadsheet has no tick boxes; choose TRUE or FALSE from the list in the cell.";

describe("a plan written through the true client library", () => {
  test("holds everything the plan asks for, cell by cell and chart by chart", async () => {
    const { workbook } = officeHost();
    expect(await excelHost().write(samplePlan())).toEqual({
      sheets: ["Player's comparison", "Shots & more"],
      notes: [NO_CHART_TEXT],
    });
    expect(comparableContents(contentsOfOfficeHost(workbook, isNew))).toEqual(expected);
  });

  test("takes two syncs and the library's own tidying up", async () => {
    const { requests } = officeHost();
    await excelHost().write(samplePlan());
    expect(requests).toHaveLength(3);
  });

  test("puts no member on an object that the library does not know", async () => {
    officeHost();
    const strays = watchMembers();
    await excelHost().write(samplePlan());
    expect(strays()).toEqual([]);
  });

  test("leaves the sheets that stood before as they were", async () => {
    const { workbook } = officeHost();
    await Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Sheet1").getRange("A1:B1").formulas = [["'mine", "=A1"]];
      await context.sync();
    });
    const before = structuredClone(workbook.sheets[0]);
    await excelHost().write(samplePlan());
    expect(workbook.sheets[0]).toEqual(before);
  });
});

/** The sample plan's last sheet with something else on it. */
function planWith(more: Partial<SheetPlan>): WorkbookPlan {
  const { sheets, names, active } = samplePlan();
  return { sheets: [sheets[0]!, sheets[1]!, { ...sheets[2]!, ...more }], names, active };
}

describe("what the spreadsheet does not take", () => {
  test("a formula of more than 8,192 letters leaves its answers, and that is said", async () => {
    const formula = `SUM(${"1,".repeat(4_100)}1)`;
    const blocks = [
      {
        row: 0,
        column: 0,
        cells: [
          [
            { formula, value: 4101 },
            { formula: "1+1", value: 2 },
          ],
        ],
      },
      { row: 2, column: 0, cells: [[{ formula, value: 1, spills: [[1, 2]] }, null]] },
    ];
    for (const version of ["1.20", "1.9"]) {
      const { workbook } = officeHost(version);
      expect(await excelHost().write(planWith({ blocks }))).toMatchObject({
        notes: expect.arrayContaining([
          "A formula was too long for the spreadsheet; in its place is its answer, which does not follow.",
        ]),
      });
      const { cells } = contentsOfOfficeHost(workbook, (name) => name === "Limits").sheets[0]!;
      expect(cells).toMatchObject({
        A1: { value: 4101 },
        B1: { formula: "1+1" },
        A3: { value: 1 },
        B3: { value: 2 },
      });
    }
  });

  test("a list of choices that is too long keeps its message, takes any entry, and that is said", async () => {
    const area = { row: 0, column: 0, rows: 1, columns: 1 };
    const choices = Array.from({ length: 40 }, (_, i) => `Build ${i}`);
    const message = "One of the builds.";
    const { workbook } = officeHost();
    expect(
      await excelHost().write(planWith({ validations: [{ kind: "list", area, choices, message }] })),
    ).toMatchObject({
      notes: expect.arrayContaining([
        "A list of choices was too long for the spreadsheet to check; its cells take any entry.",
      ]),
    });
    const painted = workbook.sheets
      .at(-1)!
      .paints.filter(({ property }) => property.startsWith("Validation"));
    expect(painted.map(({ property, value }) => [property, value])).toEqual([
      ["Validation/Prompt", expect.objectContaining({ message, showPrompt: true })],
    ]);
  });
});

describe("an older spreadsheet", () => {
  test("of ExcelApi 1.17 gets lists for tick boxes and comments for notes, and says so", async () => {
    const { workbook } = officeHost("1.17");
    expect(await excelHost().write(samplePlan())).toMatchObject({
      notes: [
        NO_BOXES,
        NO_CHART_TEXT,
        "The explanations on single cells were written as comments in your name.",
      ],
    });
    expect(comparableContents(contentsOfOfficeHost(workbook, isNew))).toEqual(expected);
    expect(workbook.sheets[1]!.comments.size).toBe(1);
  });

  test("without dynamic arrays has each cell of a spill ask for its own part of the answer", async () => {
    const spilling = officeHost("1.12").workbook;
    await excelHost().write(samplePlan());
    const cells = (workbook: typeof spilling) =>
      contentsOfOfficeHost(workbook, (name) => name === "Player's comparison").sheets[0]!.cells;
    expect(cells(spilling).B13).toMatchObject({ formula: SIDE_BY_SIDE, spills: "B13:F13" });
    const { workbook } = officeHost("1.11");
    expect(await excelHost().write(samplePlan())).toMatchObject({
      notes: expect.arrayContaining([NO_SPILLS]),
    });
    for (const [i, cell] of FILLED.entries()) {
      expect(cells(workbook)[cell]).toMatchObject({ formula: partOf(i) });
      expect(cells(workbook)[cell]).not.toHaveProperty("spills");
    }
  });

  test("of ExcelApi 1.9 gets everything but the notes", async () => {
    const { workbook } = officeHost("1.9");
    const written = await excelHost().write(samplePlan());
    expect(written).toMatchObject({
      notes: [
        NO_SPILLS,
        NO_BOXES,
        NO_CHART_TEXT,
        "This spreadsheet takes no notes from add-ins; the explanations on single cells were left out.",
      ],
    });
    const { sheets } = comparableContents(contentsOfOfficeHost(workbook, isNew));
    const noteless = structuredClone(expected.sheets).map((sheet) => {
      for (const cell of Object.values(sheet.cells)) Reflect.deleteProperty(cell, "note");
      return sheet;
    });
    // Each cell of a spill has a formula of its own there; the test above says which.
    const row = noteless[0]!.cells;
    for (const [i, cell] of FILLED.entries()) {
      const { format, look } = row[cell]!;
      Object.assign(row, {
        [cell]: { formula: partOf(i), ...(format && { format }), ...(look && { look }) },
      });
    }
    expect(sheets).toEqual(noteless);
  });

  test("of ExcelApi 1.8 is told that it is too old and sent nothing", async () => {
    const { requests } = officeHost("1.8");
    expect(await excelHost().write(samplePlan())).toMatchObject({ kind: "unavailable" });
    expect(requests).toEqual([]);
  });

  test("that promises a set which the loaded library lacks gets the same fallbacks", async () => {
    const { workbook } = officeHost("1.20");
    removeNewerMembers();
    const strays = watchMembers();
    await excelHost().write(samplePlan());
    expect(strays()).toEqual([]);
    expect(comparableContents(contentsOfOfficeHost(workbook, isNew))).toEqual(expected);
  });
});

describe("names that are taken", () => {
  test("are read in one request: sheets, tables and named areas", async () => {
    const { requests } = officeHost();
    await excelHost().write(samplePlan());
    requests.length = 0;
    expect(await excelHost().taken()).toEqual({
      sheets: ["Sheet1", "Player's comparison", "Shots & more", "Limits"],
      names: ["Kept_carry", "Shots_1"],
    });
    expect(requests).toHaveLength(1);
  });

  test("stop a plan before anything is written", async () => {
    const { workbook } = officeHost();
    await excelHost().write(samplePlan());
    const before = structuredClone(workbook);
    expect(await excelHost().write(samplePlan())).toEqual({
      kind: "invalid",
      message:
        'The workbook already has a sheet called "Player\'s comparison"; a new one needs another name.',
    });
    expect({ ...workbook, last: 0 }).toEqual({ ...before, last: 0 });
  });
});

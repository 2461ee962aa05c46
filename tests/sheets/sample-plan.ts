import quantile from "@stdlib/stats-base-dists-t-quantile";
import { mean, sampleStandardDeviation } from "simple-statistics";
import { cellName, sheetAreaName } from "../../src/sheets/a1.ts";
import type {
  Area,
  CellValue,
  SeriesPlan,
  SheetArea,
  SheetPlan,
  WorkbookPlan,
} from "../../src/sheets/plan.ts";
import { EMPTY_SHEET } from "./empty-sheet.ts";

/**
 * A small invented workbook that uses everything a plan can say: what a host does not carry out shows in it.
 * Cached answers are computed here, so that a host that calculates can be held against them.
 */
export function samplePlan(): WorkbookPlan {
  return {
    sheets: [comparison(), shots(), limits()],
    names: [{ name: "Kept_carry", at: { sheet: SHOTS, area: shotsColumn(2) } }],
    active: COMPARISON,
  };
}

/** Names with a space, an apostrophe and a sign, for these must be quoted in formulas and print areas. */
const COMPARISON = "Player's comparison";
const SHOTS = "Shots & more";
const LIMITS = "Limits";

const BUILDS = [
  { name: "A 65 g", color: "#1d5c4a", marker: "circle", carry: [251.2, 248.9, 255.1, 250.4, 246.3] },
  { name: "B 75 g", color: "#b4531f", marker: "square", carry: [246.8, 249.5, 244.1, 247.7, 243.6] },
  { name: "C 85 g", color: "#2b5c9e", marker: "diamond", carry: [241.9, 245.2, 240.3, 238.8, 243.4] },
] as const;
const OFFLINE = [-3.2, 8.1, 4.4, -11.6, 0.7];

/** Text that spreadsheets are prone to take for something else. */
export const AWKWARD_TEXTS = [
  '=HYPERLINK("x")',
  "+1+1",
  "-2+3",
  "@x",
  "007",
  "TRUE",
  "Jan 5",
  "1E5",
  "#N/A",
  "'quoted",
  " spaced ",
  "two\nlines",
  'a <b> & "c"',
  "_x0041_",
  "é 漢字 🏌",
] as const;

const PER_BUILD = OFFLINE.length;
const ROWS = BUILDS.length * PER_BUILD;
const area = (row: number, column: number, rows: number, columns: number): Area => ({
  row,
  column,
  rows,
  columns,
});
const shotsColumn = (column: number): Area => area(1, column, ROWS, 1);
const buildColumn = (build: number, column: number): SheetArea => ({
  sheet: SHOTS,
  area: area(1 + build * PER_BUILD, column, PER_BUILD, 1),
});

function shots(): SheetPlan {
  const rows = BUILDS.flatMap(({ name, carry }, build) =>
    carry.map((yards, i): CellValue[] => [
      true,
      name,
      yards,
      OFFLINE[i]!,
      AWKWARD_TEXTS[build * PER_BUILD + i] ?? null,
    ]),
  );
  return {
    ...EMPTY_SHEET,
    name: SHOTS,
    blocks: [
      { row: 0, column: 0, cells: [["Keep", "Build", "Carry (yd)", "Offline (yd)", "Remark"], ...rows] },
    ],
    styles: [
      { area: area(0, 0, 1, 5), style: "headingCentre" },
      { area: shotsColumn(2), style: "figure" },
      { area: shotsColumn(3), style: "faint" },
    ],
    formats: [{ area: area(1, 2, ROWS, 2), format: "0.0" }],
    widths: [
      { column: 0, columns: 1, characters: 8 },
      { column: 1, columns: 3, characters: 13.5 },
      { column: 4, columns: 1, characters: 24 },
    ],
    heights: [{ row: 0, rows: 1, points: 32 }],
    frozen: { rows: 1, columns: 2 },
    tables: [{ name: "Shots_1", area: area(0, 0, ROWS + 1, 5) }],
    ticks: [shotsColumn(0)],
    conditions: [{ area: area(1, 0, ROWS, 5), formula: "NOT($A2)", style: "dimmed" }],
    notes: [{ row: 0, column: 3, text: "Right of the target line is positive.\nLeft is negative." }],
    print: { landscape: false, pagesWide: 1, pagesTall: 0, titleRows: { row: 0, rows: 1 } },
  };
}

function comparison(): SheetPlan {
  const rows = BUILDS.map(({ name, carry }, i): CellValue[] => {
    const row = 5 + i;
    const at = sheetAreaName(buildColumn(i, 2));
    const average = mean([...carry]);
    const spread = sampleStandardDeviation([...carry]);
    const half = (quantile(0.975, PER_BUILD - 1) * spread) / Math.sqrt(PER_BUILD);
    return [
      name,
      { formula: `COUNTIFS(${column(1)},${cellName(row, 0, "column")},${column(0)},TRUE)`, value: PER_BUILD },
      {
        formula: `AVERAGEIFS(${column(2)},${column(1)},${cellName(row, 0)},${column(0)},TRUE)`,
        value: average,
      },
      { formula: `STDEV.S(${at})`, value: spread },
      { formula: `T.INV.2T(0.05,B${row + 1}-1)*D${row + 1}/SQRT(B${row + 1})`, value: half },
      {
        formula: `IFERROR(IF(C${row + 1}>245,"long","short"),"none")`,
        value: average > 245 ? "long" : "short",
      },
      { formula: `C${row + 1}=MAX($C$6:$C$8)`, value: i === 0 },
    ];
  });
  const sideBySide = `TRANSPOSE(${sheetAreaName(buildColumn(0, 3))})`;
  const everything = mean(BUILDS.flatMap(({ carry }) => [...carry]));
  return {
    ...EMPTY_SHEET,
    name: COMPARISON,
    blocks: [
      { row: 0, column: 0, cells: [["Harrow Lane: three builds"]] },
      { row: 1, column: 0, cells: [["=not a formula: five balls a build"]] },
      { row: 4, column: 0, cells: [["Build", "n", "Mean", "SD", "±", "Word", "Longest"], ...rows] },
      {
        row: 9,
        column: 0,
        cells: [
          ["All shots", null, { formula: "AVERAGE(Kept_carry)", value: everything }],
          ["Goal", "high", 250],
          ["Day", null, 45292],
          // Over figures, not over formulas: the workbook in memory then knows the answers too.
          ["Offline of A", { formula: sideBySide, value: OFFLINE[0]!, spills: [OFFLINE] }, null],
        ],
      },
    ],
    styles: [
      { area: area(0, 0, 1, 7), style: "title" },
      { area: area(1, 0, 1, 7), style: "subtitle" },
      { area: area(4, 0, 1, 7), style: "group" },
      { area: area(4, 1, 1, 6), style: "headingCentre" },
      { area: area(5, 1, 3, 4), style: "figure" },
      { area: area(5, 2, 1, 1), style: "figureStrong" },
      { area: area(9, 0, 3, 1), style: "label" },
      { area: area(10, 1, 1, 2), style: "input" },
      { area: area(13, 0, 1, 7), style: "warning" },
    ],
    formats: [
      { area: area(5, 2, 3, 3), format: "0.0" },
      { area: area(9, 2, 1, 1), format: "#,##0.00" },
      { area: area(11, 2, 1, 1), format: "yyyy-mm-dd" },
      { area: area(12, 1, 1, PER_BUILD), format: "0.0" },
    ],
    widths: [
      { column: 0, columns: 1, characters: 18 },
      { column: 1, columns: 6, characters: 11 },
    ],
    heights: [
      { row: 0, rows: 1, points: 30 },
      { row: 13, rows: 2, points: 24 },
    ],
    merges: [area(0, 0, 1, 7), area(13, 0, 1, 7)],
    frozen: { rows: 5, columns: 0 },
    validations: [
      {
        area: area(10, 1, 1, 1),
        kind: "list",
        choices: ["high", "low", "near"],
        message: "Pick high, low or near.",
      },
      { area: area(10, 2, 1, 1), kind: "number", least: 0, most: 400, message: "Yards from 0 to 400." },
    ],
    conditions: [
      { area: area(5, 0, 3, 7), formula: "$G6", style: "good" },
      { area: area(5, 3, 3, 1), formula: "AND($D6>3,$B6>2)", style: "alert" },
    ],
    charts: [scatter(), bars()],
    notes: [{ row: 4, column: 4, text: "Half the 95 % interval of the mean." }],
    print: {
      landscape: true,
      area: area(0, 0, 52, 12),
      pagesWide: 1,
      pagesTall: 1,
      titleRows: { row: 0, rows: 2 },
      footer: "7-irons at Harrow Lane & sons",
    },
  };
}

function column(index: number): string {
  return sheetAreaName({ sheet: SHOTS, area: shotsColumn(index) });
}

function scatter(): ComparisonChart {
  const builds = BUILDS.map(
    ({ name, color, marker }, i): SeriesPlan => ({
      name,
      x: buildColumn(i, 3),
      y: buildColumn(i, 2),
      color,
      marker,
      markerSize: 7,
      line: "none",
      unlisted: false,
    }),
  );
  const lines = BUILDS.map(
    ({ name, color }, i): SeriesPlan => ({
      name: `${name} mean`,
      x: { sheet: LIMITS, area: area(1, 0, 2, 1) },
      y: { sheet: LIMITS, area: area(1, 1 + i, 2, 1) },
      color,
      marker: "none",
      markerSize: 0,
      line: i === 0 ? "solid" : "dash",
      unlisted: true,
    }),
  );
  return {
    name: "Carry and offline",
    title: "Where the shots came down",
    alt: "Carry over offline for three builds; build A carries furthest.",
    area: area(15, 0, 18, 7),
    kind: "scatter",
    x: { title: "Offline (yd)", least: -20, most: 20, format: "0" },
    y: { title: "Carry (yd)", least: 235, format: "0" },
    series: [...builds, ...lines],
    legend: true,
  };
}

type ComparisonChart = SheetPlan["charts"][number];

function bars(): ComparisonChart {
  return {
    name: "Mean carry",
    title: "Mean carry by build",
    alt: "A bar for each build: A is longest, C is shortest.",
    area: area(34, 0, 16, 7),
    kind: "bar",
    x: { title: "Build", format: "General", hideLabels: false },
    y: { title: "Carry (yd)", least: 0, most: 300, format: "0", hideLabels: true },
    series: [
      {
        name: "Mean carry",
        x: { sheet: COMPARISON, area: area(5, 0, 3, 1) },
        y: { sheet: COMPARISON, area: area(5, 2, 3, 1) },
        color: "#1d5c4a",
        marker: "none",
        markerSize: 0,
        line: "none",
        unlisted: false,
      },
    ],
    legend: false,
  };
}

function limits(): SheetPlan {
  const means = BUILDS.map(({ carry }) => mean([...carry]));
  const formulas = means.map(
    (value, i): CellValue => ({ formula: `'Player''s comparison'!$C$${6 + i}`, value }),
  );
  return {
    ...EMPTY_SHEET,
    name: LIMITS,
    blocks: [
      { row: 0, column: 0, cells: [["Offline", ...BUILDS.map(({ name }) => name)]] },
      {
        row: 1,
        column: 0,
        cells: [
          [-20, ...formulas],
          [20, ...formulas],
        ],
      },
    ],
    hidden: true,
  };
}

import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import type { MetricKey } from "../shots/metrics.ts";
import { tQuantile } from "../stats/index.ts";
import { areaName, cellName, sheetName } from "./a1.ts";
import type { CellValue } from "./plan.ts";
import { formula, SheetDraft } from "./sheet-draft.ts";
import type { ShotsLayout } from "./shots-layout.ts";

/** Columns of the Workings sheet, from A. */
const HEADINGS = [
  "Build",
  "Metric",
  "n",
  "Mean",
  "SD",
  "Variance of the mean",
  "t for n - 1",
  "Low 95 %",
  "High 95 %",
  "Difference",
  "Welch df",
  "t for Welch",
  "Difference low",
  "Difference high",
] as const;

/** Heading of a column of the Workings sheet. */
export type WorkingsColumn = (typeof HEADINGS)[number];

const VARIANCE = "Variance of the mean";
const FIRST_ROW = 2;

/** Where on the Workings sheet a figure stands. */
export interface WorkingsLayout {
  readonly sheet: string;
  /** Row below the figures, counted from 0, where charts may keep theirs. */
  readonly end: number;
  /** `'Workings'!$D$5` */
  cell(build: string, metric: MetricKey, column: WorkingsColumn): string;
  /** Row above the figures, as the spreadsheet counts it. */
  readonly first: number;
  /** A column of figures, all builds and metrics. */
  all(column: WorkingsColumn): string;
  /** A cell that holds the build's name. */
  buildCell(build: string): string;
  /** The same for formulas on the sheet itself: `$D$5` */
  local(build: string, metric: MetricKey, column: WorkingsColumn): string;
}

/** The places of a session on its Workings sheet: a row for each build and metric. */
export function workingsLayout(session: Session, shots: ShotsLayout, name: string): WorkingsLayout {
  const rowOf = (build: string, metric: MetricKey) =>
    FIRST_ROW +
    session.builds.findIndex((one) => one.name === build) * shots.metrics.length +
    shots.metrics.findIndex((one) => one.key === metric);
  const local = (build: string, metric: MetricKey, column: WorkingsColumn) =>
    cellName(rowOf(build, metric), HEADINGS.indexOf(column), "both");
  const rows = session.builds.length * shots.metrics.length;
  return {
    sheet: name,
    first: FIRST_ROW,
    end: FIRST_ROW + rows,
    all: (column) =>
      `${sheetName(name)}!${areaName({ row: FIRST_ROW, column: HEADINGS.indexOf(column), rows, columns: 1 }, "both")}`,
    cell: (build, metric, column) => `${sheetName(name)}!${local(build, metric, column)}`,
    buildCell: (build) => `${sheetName(name)}!${local(build, shots.metrics[0]!.key, "Build")}`,
    local,
  };
}

/**
 * The Workings sheet: a row for each build and metric, worked out by native formulas over the Shots sheet. The
 * Comparison sheet reads from here. Only functions of 2007 stand in it, so that every spreadsheet calculates it.
 *
 * The t quantile is taken from the inverse of the beta distribution, since the spreadsheet's own one cuts degrees of
 * freedom to whole numbers, which Welch's are not: for x = BETAINV(p, df/2, 1/2), t = sqrt(df (1/x - 1)).
 */
export function workingsSheet(
  session: Session,
  comparison: Comparison,
  shots: ShotsLayout,
  layout: WorkingsLayout,
): SheetDraft {
  const draft = new SheetDraft(layout.sheet, true);
  draft.put(0, 0, [["Workings of the Comparison sheet. Nothing here needs to be typed."]], "subtitle");
  draft.put(1, 0, [[...HEADINGS]], "headingCentre");
  const rows = session.builds.flatMap(({ name }) =>
    shots.metrics.map(({ key }) => workingsRow(session, comparison, shots, layout, name, key)),
  );
  draft.put(FIRST_ROW, 0, rows, "plain");
  draft.width(0, 1, 24);
  draft.width(1, HEADINGS.length - 1, 14);
  draft.freeze(FIRST_ROW, 2);
  return draft;
}

function workingsRow(
  session: Session,
  comparison: Comparison,
  shots: ShotsLayout,
  layout: WorkingsLayout,
  build: string,
  key: MetricKey,
): CellValue[] {
  const figures = comparison.builds.find((one) => one.name === build)!.metrics.get(key);
  const change = comparison.differences.find((one) => one.build === build && one.metric === key);
  const own = (column: WorkingsColumn) => layout.local(build, key, column);
  const base = (column: WorkingsColumn) => layout.local(session.baseline, key, column);
  const column = shots.figures(key);
  const counted = `(${shots.build}=${own("Build")})*(${shots.keep}=TRUE)*ISNUMBER(${column})`;
  const [n, mean, sd, t, va, vb] = [
    own("n"),
    own("Mean"),
    own("SD"),
    own("t for n - 1"),
    own(VARIANCE),
    base(VARIANCE),
  ];
  const cell = (text: string, value: number | null | undefined) => formula(text, value ?? "");
  const ifNumber = (needed: string, text: string) => `IF(ISNUMBER(${needed}),${text},"")`;

  const variance = figures?.sd == null ? null : figures.sd ** 2 / figures.n;
  const row: CellValue[] = [
    build,
    shots.metrics.find((metric) => metric.key === key)!.label,
    cell(`SUMPRODUCT(${counted})`, figures?.n ?? 0),
    cell(`IF(${n}>0,SUMPRODUCT(${counted},${column})/${n},"")`, figures?.mean),
    cell(`IF(${n}>1,SQRT(SUMPRODUCT(${counted}*(${column}-${mean})^2)/(${n}-1)),"")`, figures?.sd),
    cell(ifNumber(sd, `${sd}^2/${n}`), variance),
    cell(ifNumber(sd, tOf(`(${n}-1)`)), figures?.high == null ? null : tTwoSided(figures.n - 1)),
    cell(ifNumber(sd, `${mean}-${t}*SQRT(${va})`), figures?.low),
    cell(ifNumber(sd, `${mean}+${t}*SQRT(${va})`), figures?.high),
  ];
  if (build === session.baseline) return [...row, null, null, null, null, null];
  const [difference, df, welchT] = [own("Difference"), own("Welch df"), own("t for Welch")];
  const both = (a: string, b: string, text: string) => `IF(AND(ISNUMBER(${a}),ISNUMBER(${b})),${text},"")`;
  const satterthwaite = `(${va}+${vb})^2/(${va}^2/(${n}-1)+${vb}^2/(${base("n")}-1))`;
  const limit = `${welchT}*SQRT(${va}+${vb})`;
  return [
    ...row,
    cell(both(mean, base("Mean"), `${mean}-${base("Mean")}`), change?.difference),
    cell(both(va, vb, `IF(${va}+${vb}>0,${satterthwaite},"")`), change?.df),
    cell(ifNumber(df, tOf(df)), change?.df == null ? null : tTwoSided(change.df)),
    cell(ifNumber(df, `${difference}-${limit}`), change?.low),
    cell(ifNumber(df, `${difference}+${limit}`), change?.high),
  ];
}

function tOf(df: string): string {
  return `SQRT(${df}*(1/BETAINV(0.05,${df}/2,0.5)-1))`;
}

function tTwoSided(df: number): number {
  return tQuantile(0.975, df);
}

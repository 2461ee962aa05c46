import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import type { Metric, MetricGroup } from "../shots/metrics.ts";
import { cellName } from "./a1.ts";
import { numberFormat, unitText } from "./display-session.ts";
import type { CellValue } from "./plan.ts";
import { area, formula, type SheetDraft } from "./sheet-draft.ts";
import type { ShotsLayout } from "./shots-layout.ts";
import type { WorkingsLayout } from "./workings-sheet.ts";

/** Label and unit stand before the builds; each build takes four columns. */
export const BEFORE_BUILDS = 2;
/** See `BEFORE_BUILDS`. */
export const PER_BUILD = 4;
const COLUMNS = ["Mean", "SD", "Change", "± 95 %"];
const CHANGE = 2;
const LIMITS = 3;

const GROUP_TITLES: Readonly<Record<MetricGroup, string>> = {
  delivery: "Delivery: what the club did",
  launch: "Launch: how the ball left",
  flight: "Flight",
  group: "Group: left and right",
};

/**
 * The live table: mean and spread of each metric, build beside build, and how far each build lies from the baseline
 * with its 95 % limits. A change whose limits leave 0 out is shaded. Answers the next free row.
 */
export function putComparisonTable(
  draft: SheetDraft,
  session: Session,
  comparison: Comparison,
  shots: ShotsLayout,
  workings: WorkingsLayout,
  from: number,
): number {
  putHeadings(draft, session, from);
  putCounts(draft, session, comparison, shots, workings, from + 2);
  const width = session.builds.length * PER_BUILD;
  const first = from + 3;
  let row = first;
  let group: MetricGroup | null = null;
  for (const metric of shots.metrics) {
    if (metric.group !== group) {
      group = metric.group;
      draft.put(row, 0, [[GROUP_TITLES[group]]]);
      draft.style(area(row, 0, 1, BEFORE_BUILDS + width), "group");
      row++;
    }
    draft.put(row, 0, [[metric.label, unitText(metric, session.units)]], "label");
    const cells = session.builds.flatMap(({ name }) => cellsOf(session, comparison, workings, name, metric));
    draft.put(row, BEFORE_BUILDS, [cells], "figure", numberFormat(metric.decimals));
    session.builds.forEach((_, b) => {
      const change = area(row, BEFORE_BUILDS + b * PER_BUILD + CHANGE);
      draft.format(change, numberFormat(metric.decimals, true));
    });
    row++;
  }
  session.builds.forEach(({ name }, b) => {
    if (name === session.baseline) return;
    const column = BEFORE_BUILDS + b * PER_BUILD + CHANGE;
    const [change, limits] = [column, column - CHANGE + LIMITS].map((at) => cellName(first, at, "column"));
    const formulaText = `IF(AND(ISNUMBER(${change}),ISNUMBER(${limits})),ABS(${change})>${limits},FALSE)`;
    draft.condition({ area: area(first, column, row - first, 2), formula: formulaText, style: "good" });
  });
  return row;
}

/** Names of the builds over their columns, and what the columns hold below them. */
function putHeadings(draft: SheetDraft, session: Session, row: number): void {
  draft.putAcross(row, 0, BEFORE_BUILDS, "Build by build", "headingLeft");
  draft.put(row + 1, 0, [["Against the baseline", null]]);
  draft.merge(area(row + 1, 0, 1, BEFORE_BUILDS));
  draft.style(area(row + 1, 0, 1, BEFORE_BUILDS), "headingLeft");
  session.builds.forEach(({ name }, b) => {
    const column = BEFORE_BUILDS + b * PER_BUILD;
    draft.putAcross(
      row,
      column,
      PER_BUILD,
      name === session.baseline ? `${name} (baseline)` : name,
      "headingCentre",
    );
    draft.put(row + 1, column, [
      name === session.baseline ? COLUMNS.map((title, i) => (i < CHANGE ? title : null)) : COLUMNS,
    ]);
  });
  draft.style(area(row + 1, BEFORE_BUILDS, 1, session.builds.length * PER_BUILD), "headingCentre");
  draft.height(row, 32);
}

function putCounts(
  draft: SheetDraft,
  session: Session,
  comparison: Comparison,
  shots: ShotsLayout,
  workings: WorkingsLayout,
  row: number,
): void {
  draft.put(row, 0, [["Shots kept", null]], "label");
  const counts = session.builds.flatMap(({ name }): CellValue[] => {
    const build = comparison.builds.find((one) => one.name === name)!;
    const mine = `(${shots.build}=${workings.buildCell(name)})`;
    return [
      formula(`SUMPRODUCT(${mine}*(${shots.keep}=TRUE))`, build.kept),
      formula(`"of "&SUMPRODUCT(--${mine})`, `of ${build.shots}`),
      null,
      null,
    ];
  });
  draft.put(row, BEFORE_BUILDS, [counts], "figure", "0");
}

function cellsOf(
  session: Session,
  comparison: Comparison,
  workings: WorkingsLayout,
  build: string,
  { key }: Metric,
): CellValue[] {
  const figures = comparison.builds.find((one) => one.name === build)!.metrics.get(key);
  const own = [
    formula(workings.cell(build, key, "Mean"), figures?.mean ?? ""),
    formula(workings.cell(build, key, "SD"), figures?.sd ?? ""),
  ];
  if (build === session.baseline) return [...own, null, null];
  const change = comparison.differences.find((one) => one.build === build && one.metric === key);
  const [difference, high] = [
    workings.cell(build, key, "Difference"),
    workings.cell(build, key, "Difference high"),
  ];
  return [
    ...own,
    formula(difference, change?.difference ?? ""),
    formula(
      `IF(ISNUMBER(${high}),${high}-${difference},"")`,
      change?.high == null ? "" : change.high - change.difference,
    ),
  ];
}

import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import type { MetricGroup } from "../shots/metrics.ts";
import { cellName } from "./a1.ts";
import { numberFormat, unitText } from "./display-session.ts";
import type { CellValue } from "./plan.ts";
import { area, formula, type SheetDraft } from "./sheet-draft.ts";
import type { ShotsLayout } from "./shots-layout.ts";
import type { WorkingsLayout } from "./workings-sheet.ts";

/** Label and unit stand before the builds; each build takes three columns. */
export const BEFORE_BUILDS = 2;
export const PER_BUILD = 3;

const GROUP_TITLES: Readonly<Record<MetricGroup, string>> = {
  delivery: "Delivery: what the club did",
  launch: "Launch: how the ball left",
  flight: "Flight",
  group: "Group: left and right",
};

/** Names of the builds over their three columns, and what the columns hold below them. */
export function putBuildHeadings(
  draft: SheetDraft,
  session: Session,
  row: number,
  title: string,
  columns: readonly string[],
): void {
  const width = session.builds.length * PER_BUILD;
  draft.putAcross(row, 0, BEFORE_BUILDS, title, "headingLeft");
  draft.put(row + 1, 0, [[null, null, ...session.builds.flatMap(() => columns)]], "headingCentre");
  session.builds.forEach((build, b) => {
    draft.putAcross(row, BEFORE_BUILDS + b * PER_BUILD, PER_BUILD, build.name, "headingCentre");
  });
  draft.style(area(row, BEFORE_BUILDS, 1, width), "headingCentre");
  draft.height(row, 32);
}

/** Lays metric rows under their group titles; `cells` gives a build's three cells for a metric. Answers the next row. */
export function putMetricRows(
  draft: SheetDraft,
  session: Session,
  shots: ShotsLayout,
  from: number,
  cells: (build: string, metric: ShotsLayout["metrics"][number]) => readonly CellValue[],
  signed: boolean,
): number {
  const width = session.builds.length * PER_BUILD;
  let row = from;
  let group: MetricGroup | null = null;
  for (const metric of shots.metrics) {
    if (metric.group !== group) {
      group = metric.group;
      draft.put(row, 0, [[GROUP_TITLES[group]]]);
      draft.style(area(row, 0, 1, BEFORE_BUILDS + width), "group");
      row++;
    }
    draft.put(row, 0, [[metric.label, unitText(metric, session.units)]], "label");
    draft.put(row, BEFORE_BUILDS, [session.builds.flatMap(({ name }) => cells(name, metric))], "figure");
    draft.format(area(row, BEFORE_BUILDS, 1, width), numberFormat(metric.decimals, signed));
    row++;
  }
  return row;
}

/** Means, spreads and limits, build beside build. Answers the next free row. */
export function putMeans(
  draft: SheetDraft,
  session: Session,
  comparison: Comparison,
  shots: ShotsLayout,
  workings: WorkingsLayout,
  from: number,
): number {
  putBuildHeadings(draft, session, from, "Averages", ["Mean", "SD", "± 95 %"]);
  draft.put(from + 2, 0, [["Shots kept", null]], "label");
  const counts = session.builds.flatMap(({ name }): CellValue[] => {
    const build = comparison.builds.find((one) => one.name === name)!;
    const mine = `(${shots.build}=${workings.cell(name, shots.metrics[0]!.key, "Build")})`;
    return [
      formula(`SUMPRODUCT(${mine}*(${shots.keep}=TRUE))`, build.kept),
      formula(`"of "&SUMPRODUCT(--${mine})`, `of ${build.shots}`),
      null,
    ];
  });
  draft.put(from + 2, BEFORE_BUILDS, [counts], "figure", "0");
  return putMetricRows(
    draft,
    session,
    shots,
    from + 3,
    (build, { key }) => {
      const figures = comparison.builds.find((one) => one.name === build)?.metrics.get(key);
      const high = workings.cell(build, key, "High 95 %");
      const mean = workings.cell(build, key, "Mean");
      return [
        formula(mean, figures?.mean ?? ""),
        formula(workings.cell(build, key, "SD"), figures?.sd ?? ""),
        formula(
          `IF(ISNUMBER(${high}),${high}-${mean},"")`,
          figures?.high == null ? "" : figures.high - figures.mean,
        ),
      ];
    },
    false,
  );
}

/** Differences from the baseline with their limits. Answers the next free row. */
export function putDifferences(
  draft: SheetDraft,
  session: Session,
  comparison: Comparison,
  shots: ShotsLayout,
  workings: WorkingsLayout,
  from: number,
): number {
  putBuildHeadings(draft, session, from, `Against ${session.baseline}`, [
    "Difference",
    "Low 95 %",
    "High 95 %",
  ]);
  const end = putMetricRows(
    draft,
    session,
    shots,
    from + 2,
    (build, { key }) => {
      if (build === session.baseline) return [null, null, null];
      const change = comparison.differences.find((one) => one.build === build && one.metric === key);
      return [
        formula(workings.cell(build, key, "Difference"), change?.difference ?? ""),
        formula(workings.cell(build, key, "Difference low"), change?.low ?? ""),
        formula(workings.cell(build, key, "Difference high"), change?.high ?? ""),
      ];
    },
    true,
  );
  session.builds.forEach((build, b) => {
    if (build.name === session.baseline) return;
    const first = BEFORE_BUILDS + b * PER_BUILD;
    draft.condition({
      area: area(from + 2, first, end - from - 2, PER_BUILD),
      formula: excludesZero(from + 2, first),
      style: "good",
    });
  });
  return end;
}

/** TRUE where both limits of a difference lie on one side of 0. */
function excludesZero(row: number, first: number): string {
  const [low, high] = [1, 2].map((step) => cellName(row, first + step, "column"));
  return `IF(AND(ISNUMBER(${low}),ISNUMBER(${high})),${low}*${high}>0,FALSE)`;
}

import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import { FIRST_CHART_COLUMN, FIRST_CHART_ROW } from "./chart-place.ts";
import { groupWords, limitsWords } from "./chart-words.ts";
import { headingOf, numberFormat } from "./display-session.ts";
import { putGroupOutlines } from "./group-outlines.ts";
import { buildColor, buildMarker } from "./palette.ts";
import type { Area, AxisPlan, CellValue } from "./plan.ts";
import { area, formula, type SheetDraft } from "./sheet-draft.ts";
import type { ShotsLayout } from "./shots-layout.ts";
import type { WorkingsLayout } from "./workings-sheet.ts";

/** Shots beyond these are left out of the picture, though not out of any figure: no eye tells more dots apart. */
const MOST_SHOTS_DRAWN = 2000;

/**
 * Where the shots landed, seen from above: offline across, carry up, a marker for each build. Each build has two
 * columns in the workings, a row a shot; a shot that is unticked or of another build is drawn on its build's mean,
 * so that no cell holds an error value and unticking takes the dot off the picture.
 */
export function putGroupChart(
  draft: SheetDraft,
  workings: SheetDraft,
  session: Session,
  comparison: Comparison,
  shots: ShotsLayout,
  layout: WorkingsLayout,
  where: Area,
): boolean {
  const { table } = session;
  if (!table.values.has("carry") || !table.values.has("offline")) return false;
  const drawn = Math.min(table.size, MOST_SHOTS_DRAWN);
  const axes = (["offline", "carry"] as const).map((key) => ({ key, column: table.values.get(key)! }));
  session.builds.forEach((build, b) => {
    const means = comparison.builds.find((one) => one.name === build.name)!.metrics;
    const rows: CellValue[][] = [];
    for (let i = 0; i < drawn; i++) {
      const counts =
        table.keep[i] &&
        table.build[i] === build.name &&
        axes.every(({ column }) => !Number.isNaN(column[i]!));
      const both = axes.map(({ key }) => `ISNUMBER(${shots.figure(key, i)})`).join(",");
      const mine = `AND(${shots.keepCell(i)}=TRUE,${shots.buildCell(i)}=${layout.local(build.name, "carry", "Build")},${both})`;
      rows.push(
        axes.map(({ key, column }) => {
          const mean = layout.local(build.name, key, "Mean");
          return formula(
            `IF(${mine},${shots.figure(key, i)},N(${mean}))`,
            counts ? column[i]! : (means.get(key)?.mean ?? 0),
          );
        }),
      );
    }
    const column = FIRST_CHART_COLUMN + 2 * b;
    workings.put(
      FIRST_CHART_ROW - 1,
      column,
      [axes.map(({ key }) => `${build.name}: ${metricOf(key).label}`)],
      "headingCentre",
    );
    workings.put(FIRST_CHART_ROW, column, rows, "plain");
  });
  const at = (b: number, axis: number) => ({
    sheet: layout.sheet,
    area: area(FIRST_CHART_ROW, FIRST_CHART_COLUMN + 2 * b + axis, drawn),
  });
  const outlines = putGroupOutlines(workings, session, comparison, shots, layout);
  const reach = (key: "offline" | "carry") =>
    Float64Array.from([...table.values.get(key)!, ...outlines[key]]);
  draft.chart({
    name: "Where the shots landed",
    title: "Where the shots landed",
    alt: `A dot for each kept shot of ${session.builds.length} builds, offline from left to right, carry upwards; around each build an outline that would hold 95 of 100 such shots.${groupWords(session, comparison)}`,
    area: where,
    kind: "scatter",
    x: { ...axisOf(session, "offline"), ...niceLimits(reach("offline"), true) },
    y: { ...axisOf(session, "carry"), ...niceLimits(reach("carry"), false) },
    series: [
      ...session.builds.map((build, b) => ({
        name: build.name,
        x: at(b, 0),
        y: at(b, 1),
        color: buildColor(b),
        marker: buildMarker(b),
        markerSize: 8,
        line: "none" as const,
        unlisted: false,
      })),
      ...outlines.series,
    ],
    legend: true,
  });
  return true;
}

/** Mean carry of each build with its 95 % limits, as an upright line with its ends and middle marked. */
export function putLimitsChart(
  draft: SheetDraft,
  workings: SheetDraft,
  session: Session,
  comparison: Comparison,
  layout: WorkingsLayout,
  where: Area,
): boolean {
  const key: MetricKey = "carry";
  if (!session.table.values.has(key)) return false;
  const column = FIRST_CHART_COLUMN + 2 * session.builds.length + 1;
  workings.put(FIRST_CHART_ROW - 1, column, [["Place", "Carry limits"]], "headingCentre");
  session.builds.forEach((build, b) => {
    const figures = comparison.builds.find((one) => one.name === build.name)?.metrics.get(key);
    const mean = layout.local(build.name, key, "Mean");
    const orMean = (name: "Low 95 %" | "High 95 %", value: number | null | undefined) => {
      const limit = layout.local(build.name, key, name);
      return formula(`IF(ISNUMBER(${limit}),${limit},N(${mean}))`, value ?? figures?.mean ?? 0);
    };
    workings.put(FIRST_CHART_ROW + 3 * b, column, [
      [b + 1, orMean("Low 95 %", figures?.low)],
      [b + 1, formula(`N(${mean})`, figures?.mean ?? 0)],
      [b + 1, orMean("High 95 %", figures?.high)],
    ]);
  });
  const at = (b: number, axis: number) => ({
    sheet: layout.sheet,
    area: area(FIRST_CHART_ROW + 3 * b, column + axis, 3),
  });
  const reach = comparison.builds.flatMap((build) => {
    const figures = build.metrics.get(key);
    return figures ? [figures.low ?? figures.mean, figures.high ?? figures.mean] : [];
  });
  draft.chart({
    name: "Carry and its limits",
    title: "Mean carry, with 95 % limits",
    alt: `Mean carry of each build with its 95 % limits: where two lines overlap widely, the builds are too close to call.${limitsWords(session, comparison, key)}`,
    area: where,
    kind: "scatter",
    x: { title: "", least: 0.5, most: session.builds.length + 0.5, format: "0", hideLabels: true },
    y: { ...axisOf(session, key), ...niceLimits(Float64Array.from(reach), false) },
    series: session.builds.map((build, b) => ({
      name: build.name,
      x: at(b, 0),
      y: at(b, 1),
      color: buildColor(b),
      marker: buildMarker(b),
      markerSize: 9,
      line: "solid" as const,
      unlisted: false,
    })),
    legend: true,
  });
  return true;
}

function axisOf(session: Session, key: MetricKey): AxisPlan {
  const metric = metricOf(key);
  const title =
    key === "offline"
      ? `${headingOf(metric, session.units)}: left is minus`
      : headingOf(metric, session.units);
  return { title, format: numberFormat(0) };
}

/** Axis ends on round figures just beyond the data; even about 0 where left and right matter. */
function niceLimits(values: Float64Array, even: boolean): { least: number; most: number } {
  const present = values.filter((value) => !Number.isNaN(value));
  let least = present.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  let most = present.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  if (present.length === 0) return { least: 0, most: 1 };
  if (even) {
    most = Math.max(Math.abs(least), Math.abs(most));
    least = -most;
  }
  const step = [1, 2, 5, 10, 20, 50, 100].find((size) => (most - least) / size <= 8) ?? 200;
  return {
    least: Math.floor((least - step / 4) / step) * step,
    most: Math.ceil((most + step / 4) / step) * step,
  };
}

import { line } from "d3-shape";
import type { ChartPlan } from "../sheets/plan.ts";
import type { ChartData } from "./chart-data.ts";
import { axisScale, linesAcross, linesUp, type Plot } from "./chart-frame.ts";
import { lineLook, markerMark } from "./chart-marks.ts";
import { type Mark, mark } from "./mark.ts";

type Point = readonly [x: number, y: number] | null;

/** Points and lines at x and y. A row without both figures breaks a line and shows no point. */
export function drawScatter(chart: ChartPlan, data: ChartData, plot: Plot): Mark[] {
  const points = data.series.map(({ x, y }) => x.map((value, i) => pointOf(value, y[i])));
  const present = points.flat().filter((point) => point !== null);
  const xs = present.map(([x]) => x);
  const ys = present.map(([, y]) => y);
  const across = axisScale(chart.x, xs, plot.left, plot.right);
  const up = axisScale(chart.y, ys, plot.bottom, plot.top);
  const path = line<Point>()
    .defined((point) => point !== null)
    .x((point) => across(point![0]))
    .y((point) => up(point![1]))
    .digits(2);
  const series = chart.series.flatMap((one, i) => {
    const row = points[i] ?? [];
    const drawn = one.line === "none" ? [] : [mark("path", { d: path(row) ?? "", ...lineLook(one) })];
    const markers = row.flatMap((point) => (point ? markerMark(one, across(point[0]), up(point[1])) : []));
    return [...drawn, ...markers];
  });
  return [
    ...linesAcross(chart.y, up, plot),
    ...linesUp(chart.x, across, plot),
    mark("clipPath", { id: "plot" }, mark("rect", clip(plot))),
    mark("g", { "clip-path": "url(#plot)" }, ...series),
  ];
}

function pointOf(x: number | string | null | undefined, y: number | null | undefined): Point {
  return typeof x === "number" && typeof y === "number" ? [x, y] : null;
}

/** Half a marker may stand out of the plot. */
function clip({ left, top, right, bottom }: Plot): Mark["attributes"] {
  return { x: left - 5, y: top - 5, width: right - left + 10, height: bottom - top + 10 };
}

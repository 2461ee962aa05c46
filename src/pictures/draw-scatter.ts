import { line } from "d3-shape";
import type { ChartPlan } from "../sheets/plan.ts";
import type { ChartData } from "./chart-data.ts";
import { axisScale, level, type Plot, upright } from "./chart-frame.ts";
import { lineLook, marker } from "./chart-legend.ts";
import { element } from "./markup.ts";

type Point = readonly [x: number, y: number] | null;

/** Points and lines at x and y. A row without both figures breaks a line and shows no point. */
export function drawScatter(chart: ChartPlan, data: ChartData, plot: Plot): string {
  const points = data.series.map(({ x, y }) => x.map((value, i) => pointOf(value, y[i])));
  const present = points.flat().filter((point) => point !== null);
  const across = axisScale(
    chart.x,
    present.map(([x]) => x),
    plot.left,
    plot.right,
  );
  const up = axisScale(
    chart.y,
    present.map(([, y]) => y),
    plot.bottom,
    plot.top,
  );
  const path = line<Point>()
    .defined((point) => point !== null)
    .x((point) => across(point![0]))
    .y((point) => up(point![1]));
  const series = chart.series.map((one, i) => {
    const row = points[i] ?? [];
    const drawn = one.line === "none" ? "" : element("path", { d: path(row) ?? "", ...lineLook(one) });
    return drawn + row.map((point) => (point ? marker(one, across(point[0]), up(point[1])) : "")).join("");
  });
  const clip = element("clipPath", { id: "plot" }, element("rect", inside(plot)));
  return (
    upright(chart.y, up, plot) +
    level(chart.x, across, plot) +
    clip +
    element("g", { "clip-path": "url(#plot)" }, series.join(""))
  );
}

function pointOf(x: number | string | null | undefined, y: number | null | undefined): Point {
  return typeof x === "number" && typeof y === "number" ? [x, y] : null;
}

/** Half a marker may stand out of the plot. */
function inside({ left, top, right, bottom }: Plot) {
  return { x: left - 5, y: top - 5, width: right - left + 10, height: bottom - top + 10 };
}

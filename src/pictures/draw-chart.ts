import type { ChartPlan } from "../sheets/plan.ts";
import type { ChartData, Size } from "./chart-data.ts";
import { plotOf, titles } from "./chart-frame.ts";
import { legend } from "./chart-legend.ts";
import { drawBars } from "./draw-bars.ts";
import { drawScatter } from "./draw-scatter.ts";
import { mark } from "./mark.ts";
import { svgText } from "./svg-text.ts";

/**
 * A chart as a picture, for hosts that have no charts of their own: SVG with the plan's title, axes, legend and
 * markers, told apart by shape as well as colour, and its text alternative in `title` and `desc`.
 */
export function drawChart(
  chart: ChartPlan,
  data: ChartData,
  size: Size = { width: 640, height: 400 },
): string {
  const plot = plotOf(chart, size);
  const { width, height } = size;
  const attributes = {
    role: "img",
    width,
    height,
    viewBox: `0 0 ${width} ${height}`,
    "font-family": "'Segoe UI', Roboto, 'Liberation Sans', Arial, sans-serif",
  };
  const drawn = chart.kind === "bar" ? drawBars(chart, data, plot) : drawScatter(chart, data, plot);
  return svgText(
    mark(
      "svg",
      attributes,
      mark("title", {}, chart.title),
      mark("desc", {}, chart.alt),
      mark("rect", { width, height, fill: "#ffffff" }),
      ...titles(chart, size, plot),
      ...drawn,
      ...legend(chart, size),
    ),
  );
}

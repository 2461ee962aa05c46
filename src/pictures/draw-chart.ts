import type { ChartPlan } from "../sheets/plan.ts";
import type { ChartData, Size } from "./chart-data.ts";
import { plotOf, titles } from "./chart-frame.ts";
import { legend } from "./chart-legend.ts";
import { drawBars } from "./draw-bars.ts";
import { drawScatter } from "./draw-scatter.ts";
import { element, escaped } from "./markup.ts";

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
  const ground = element("rect", { width: size.width, height: size.height, fill: "#ffffff" });
  const drawn = chart.kind === "bar" ? drawBars(chart, data, plot) : drawScatter(chart, data, plot);
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      role: "img",
      width: size.width,
      height: size.height,
      viewBox: `0 0 ${size.width} ${size.height}`,
      "font-family": "'Segoe UI', Roboto, 'Liberation Sans', Arial, sans-serif",
    },
    element("title", {}, escaped(chart.title)) +
      element("desc", {}, escaped(chart.alt)) +
      ground +
      titles(chart, size, plot) +
      drawn +
      legend(chart, size),
  );
}

import { CHART_LOOK } from "../../sheets/chart-look.ts";
import type { AxisPlan, ChartPlan } from "../../sheets/plan.ts";

/** Both axes of a native chart: titles, bounds, number formats, and lines across the picture only. */
export function drawAxes({ categoryAxis, valueAxis }: Excel.ChartAxes, plan: ChartPlan): void {
  drawAxis(categoryAxis, plan.x);
  drawAxis(valueAxis, plan.y);
  categoryAxis.majorGridlines.visible = false;
  valueAxis.majorGridlines.visible = true;
  const { line } = valueAxis.majorGridlines.format;
  line.color = CHART_LOOK.gridline;
  line.weight = CHART_LOOK.gridlineWeight;
  if (plan.kind === "bar") return;
  // The axes meet in the lower left corner, also where figures are negative.
  categoryAxis.position = "Minimum";
  valueAxis.position = "Minimum";
}

function drawAxis(axis: Excel.ChartAxis, plan: AxisPlan): void {
  if (plan.title) {
    axis.title.text = plan.title;
    axis.title.format.font.size = CHART_LOOK.axisTitleSize;
    axis.title.format.font.color = CHART_LOOK.ink;
  } else axis.title.visible = false;
  if (plan.least !== undefined) axis.minimum = plan.least;
  if (plan.most !== undefined) axis.maximum = plan.most;
  axis.numberFormat = plan.format;
  axis.format.font.color = CHART_LOOK.ink;
  axis.majorTickMark = "None";
  // Labels stay at the edge where the axis itself runs through the middle.
  axis.tickLabelPosition = plan.hideLabels ? "None" : "Low";
}

import { scaleBand } from "d3-scale";
import type { ChartPlan } from "../sheets/plan.ts";
import type { ChartData } from "./chart-data.ts";
import { axisScale, linesAcross, type Plot } from "./chart-frame.ts";
import { FONT, text } from "./chart-text.ts";
import { type Mark, mark } from "./mark.ts";
import { round } from "./round.ts";
import { wrappedWords } from "./wrapped-words.ts";

/** Upright bars from 0, a group for each name, a bar for each series in it. */
export function drawBars(chart: ChartPlan, data: ChartData, plot: Plot): Mark[] {
  const names = (data.series[0]?.x ?? []).map((name) => String(name ?? ""));
  const figures = data.series.flatMap(({ y }) => y.filter((value) => value !== null));
  // A bar's length says its figure, so 0 belongs on the axis.
  const up = axisScale(chart.y, [0, ...figures], plot.bottom, plot.top).clamp(true);
  const places = names.map((_, i) => String(i));
  const groups = scaleBand(places, [plot.left, plot.right]).padding(0.3);
  const bars = scaleBand(
    chart.series.map(({ name }) => name),
    [0, groups.bandwidth()],
  ).padding(chart.series.length > 1 ? 0.08 : 0);
  const floor = up(Math.max(0, up.domain()[0]!));
  const drawn = chart.series.flatMap((series, i) =>
    (data.series[i]?.y ?? []).flatMap((value, j) => {
      if (value === null) return [];
      const [top, bottom] = [Math.min(floor, up(value)), Math.max(floor, up(value))];
      return mark("rect", {
        x: round(groups(String(j))! + bars(series.name)!),
        y: round(top),
        width: round(bars.bandwidth()),
        height: round(bottom - top),
        fill: series.color,
      });
    }),
  );
  const labels = names.flatMap((name, i) =>
    wrappedWords(name, groups.step()).map((line, l) =>
      text(line, groups(String(i))! + groups.bandwidth() / 2, plot.bottom + 16 + l * (FONT + 2)),
    ),
  );
  return [...linesAcross(chart.y, up, plot), ...drawn, ...(chart.x.hideLabels ? [] : labels)];
}

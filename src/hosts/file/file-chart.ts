import type { SheetChart } from "hucre";
import { sheetAreaName } from "../../sheets/a1.ts";
import { CHART_LOOK } from "../../sheets/chart-look.ts";
import type { AxisPlan, ChartPlan, SeriesPlan } from "../../sheets/plan.ts";

type FileAxis = NonNullable<NonNullable<SheetChart["axes"]>["y"]>;
type FileSeries = SheetChart["series"][number];

/** Width in points of a line drawn between points, and of the outline that is later taken away. */
const LINE_WIDTH = 1.5;

/** A native chart in the words of the file. */
export function fileChart(chart: ChartPlan): SheetChart {
  const { row, column, rows, columns } = chart.area;
  const scatter = chart.kind === "scatter";
  return {
    type: scatter ? "scatter" : "column",
    title: chart.title,
    titleFontSize: CHART_LOOK.titleSize,
    titleBold: true,
    titleColor: CHART_LOOK.ink,
    altText: chart.alt,
    anchor: { from: { row, col: column }, to: { row: row + rows, col: column + columns } },
    series: chart.series.map(scatter ? scatterSeries : barSeries),
    legend: chart.legend ? "bottom" : false,
    legendEntries: chart.series.flatMap(({ unlisted }, idx) => (unlisted ? [{ idx, delete: true }] : [])),
    axes: {
      x: { ...fileAxis(chart.x), ...(scatter ? { crosses: "min" } : {}) },
      y: {
        ...fileAxis(chart.y),
        ...(scatter ? { crosses: "min" } : {}),
        axisTitleRotation: -90,
        gridlines: { major: true },
      },
    },
    dispBlanksAs: "gap",
    chartSpaceFillColor: CHART_LOOK.background,
    chartSpaceBorderColor: CHART_LOOK.border,
  };
}

function fileAxis(axis: AxisPlan): FileAxis {
  return {
    title: axis.title,
    axisTitleFontSize: CHART_LOOK.axisTitleSize,
    axisTitleColor: CHART_LOOK.ink,
    labelColor: CHART_LOOK.ink,
    majorTickMark: "none",
    minorTickMark: "none",
    numberFormat: { formatCode: axis.format, sourceLinked: false },
    scale: {
      ...(axis.least === undefined ? {} : { min: axis.least }),
      ...(axis.most === undefined ? {} : { max: axis.most }),
    },
    // Labels stay at the edge where the axis itself runs through the middle.
    tickLblPos: axis.hideLabels ? "none" : "low",
  };
}

/**
 * A series of points. One without a line gets an outline without a colour, which nothing else here has: it is how
 * `finishParts` finds the lines to take away, for the library cannot say that there is none.
 */
function scatterSeries(series: SeriesPlan): FileSeries {
  const { color, marker, markerSize: size, line } = series;
  return {
    ...references(series),
    ...(line === "none" ? {} : { color }),
    stroke: { width: LINE_WIDTH, ...(line === "none" ? {} : { dash: line }) },
    marker: marker === "none" ? { symbol: "none" } : { symbol: marker, size, fill: color, line: color },
  };
}

function barSeries(series: SeriesPlan): FileSeries {
  return { ...references(series), color: series.color };
}

function references({ name, x, y }: SeriesPlan): FileSeries {
  return { name, values: sheetAreaName(y), categories: sheetAreaName(x) };
}

import type { Chart, ChartAxisInfo, ChartSeriesInfo } from "hucre";
import { areaName } from "../../../src/sheets/a1.ts";
import type { Marker } from "../../../src/sheets/plan.ts";
import type { AxisContents, ChartContents, ChartLook, SeriesContents } from "../../workbook-contents.ts";

/** A chart of a file: as the reader tells it, and names and missing lines from the parts of the file themselves. */
export function contentsOfFileChart(
  chart: Chart,
  xml: string,
  drawing: string,
  place: number,
): ChartContents {
  const frames = [...drawing.matchAll(/<xdr:cNvPr [^>]*name="([^"]*)"/g)].map((match) => match[1]!);
  const outlines = xml.split("<c:ser>").slice(1);
  const unlisted = new Set(chart.legendEntries?.filter((entry) => entry.delete).map(({ idx }) => idx));
  const { from, to } = chart.anchor!;
  return {
    name: unescaped(frames[place] ?? ""),
    title: chart.title ?? "",
    alt: chart.altText ?? "",
    area: areaName({
      row: from.row,
      column: from.col,
      rows: to!.row - from.row,
      columns: to!.col - from.col,
    }),
    kind: chart.kinds[0] === "scatter" ? "scatter" : "bar",
    x: axisOf(chart.axes?.x),
    y: axisOf(chart.axes?.y),
    legend: chart.legend !== undefined && chart.legend !== false,
    look: lookOf(xml),
    series: (chart.series ?? []).map((series, i) => seriesOf(series, outlines[i] ?? "", !unlisted.has(i))),
  };
}

function lookOf(xml: string): ChartLook {
  const [title = "", ...axes] = [...xml.matchAll(/<c:title>.*?<\/c:title>/g)].map(([found]) => found);
  const own = xml.slice(xml.indexOf("</c:chart>"));
  const grid = /<c:majorGridlines>.*?<\/c:majorGridlines>/.exec(xml)?.[0] ?? "";
  const fill = (part: string) => `#${/srgbClr val="(\w+)"/.exec(part)?.[1]?.toLowerCase()}`;
  const size = (part: string) => Number(/sz="(\d+)"/.exec(part)?.[1]) / 100;
  return {
    background: fill(own),
    border: fill(own.slice(own.indexOf("<a:ln>"))),
    titleSize: size(title),
    titleColor: fill(title),
    axisTitleSizes: axes.map(size),
    labelColors: [...xml.matchAll(/<c:txPr>.*?<\/c:txPr>/g)].map(([found]) => fill(found)),
    gridline: fill(grid),
    gridlineWeight: Number(/w="(\d+)"/.exec(grid)?.[1]) / 12_700,
  };
}

function axisOf(axis: ChartAxisInfo | undefined): AxisContents {
  return {
    title: axis?.title ?? "",
    least: axis?.scale?.min ?? null,
    most: axis?.scale?.max ?? null,
    format: axis?.numberFormat?.formatCode ?? "",
    labels: axis?.tickLblPos !== "none",
  };
}

function seriesOf(series: ChartSeriesInfo, xml: string, listed: boolean): SeriesContents {
  const points = series.kind === "scatter";
  const outline = /<c:spPr>.*?<\/c:spPr>/.exec(xml)?.[0] ?? "";
  const color = series.color ?? series.marker?.fill;
  return {
    name: series.name ?? "",
    x: series.categoriesRef ?? "",
    y: series.valuesRef ?? "",
    color: `#${String(color).toLowerCase()}`,
    marker: points ? (series.marker?.symbol as Marker) : "none",
    markerSize: series.marker?.size ?? 0,
    line:
      !points || outline.includes("<a:noFill/>") ? "none" : series.stroke?.dash === "dash" ? "dash" : "solid",
    listed,
  };
}

function unescaped(text: string): string {
  return text.replaceAll("&quot;", '"').replaceAll("&lt;", "<").replaceAll("&amp;", "&");
}

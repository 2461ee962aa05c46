import type { Marker } from "../../src/sheets/plan.ts";
import type { AxisContents, ChartContents, SeriesContents } from "../workbook-contents.ts";
import type { Bag, HeldChart } from "./workbook.ts";

/** A chart in memory in the words that all hosts are compared in. The service keeps no description of a chart. */
export function contentsOfChart({ bag, series, entries }: HeldChart): ChartContents {
  const bars = bag.ChartType === "ColumnClustered";
  return {
    name: String(bag.Name),
    title: String(bag["Title/Text"]),
    alt: "",
    area: String(bag.Area),
    kind: bars ? "bar" : "scatter",
    x: axis(bag, "Axes/CategoryAxis"),
    y: axis(bag, "Axes/ValueAxis"),
    legend: bag["Legend/Visible"] === true,
    look: {
      background: String(bag["Format/Fill/Color"]),
      border: String(bag["Format/Border/Color"]),
      titleSize: Number(bag["Title/Format/Font/Size"]),
      titleColor: String(bag["Title/Format/Font/Color"]),
      axisTitleSizes: AXES.flatMap((at) =>
        axis(bag, at).title === "" ? [] : [Number(bag[`${at}/Title/Format/Font/Size`])],
      ),
      labelColors: AXES.map((at) => String(bag[`${at}/Format/Font/Color`])),
      gridline: String(bag["Axes/ValueAxis/MajorGridlines/Format/Line/Color"]),
      gridlineWeight: Number(bag["Axes/ValueAxis/MajorGridlines/Format/Line/Weight"]),
    },
    series: series.map(({ bag: held }, i) => contentsOfSeries(held, bars, entries[i]?.Visible === true)),
  };
}

const AXES = ["Axes/CategoryAxis", "Axes/ValueAxis"];

function axis(bag: Bag, at: string): AxisContents {
  return {
    title: bag[`${at}/Title/Visible`] === false ? "" : String(bag[`${at}/Title/Text`] ?? ""),
    least: (bag[`${at}/Minimum`] as number | undefined) ?? null,
    most: (bag[`${at}/Maximum`] as number | undefined) ?? null,
    format: String(bag[`${at}/NumberFormat`] ?? "General"),
    labels: bag[`${at}/TickLabelPosition`] !== "None",
  };
}

function contentsOfSeries(bag: Bag, bars: boolean, listed: boolean): SeriesContents {
  const line = bag["Format/Line/LineStyle"];
  const marker = String(bag.MarkerStyle ?? "None").toLowerCase() as Marker;
  return {
    // A name that looks like a formula has a space before it here, and only here.
    name: String(bag.Name).replace(/^ =/, "="),
    x: String(bag.X),
    y: String(bag.Y),
    color: String(bag["Format/Fill/Color"] ?? bag.MarkerBackgroundColor ?? bag["Format/Line/Color"]),
    marker: bars ? "none" : marker,
    markerSize: bars || marker === "none" ? 0 : Number(bag.MarkerSize),
    line: bars || line === "None" ? "none" : line === "Dash" ? "dash" : "solid",
    listed,
  };
}

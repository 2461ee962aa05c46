import { between, bound, type Check, colour, flag, oneOf, type Shape, text } from "./shapes.ts";

const FONT: Shape = { scalars: { Bold: flag, Color: colour, Size: between(1, 409), Italic: flag } };

const LINE: Shape = {
  scalars: {
    Color: colour,
    LineStyle: oneOf("None", "Continuous", "Dash", "DashDot", "DashDotDot", "Dot", "Grey25", "RoundDot"),
    Weight: between(0, 100),
  },
};

const FILL: Shape = {
  methods: {
    SetSolidColor: (store, color) => store.set("Color", color),
  },
};

const TITLE: Shape = {
  scalars: { Text: text, Visible: flag },
  children: { Format: { children: { Font: FONT } } },
};

const AXIS: Shape = {
  scalars: {
    Minimum: bound,
    Maximum: bound,
    NumberFormat: text,
    TickLabelPosition: oneOf("NextToAxis", "High", "Low", "None"),
    MajorTickMark: oneOf("None", "Cross", "Inside", "Outside"),
    Position: oneOf("Automatic", "Minimum", "Maximum", "Custom"),
  },
  children: {
    Title: TITLE,
    MajorGridlines: { scalars: { Visible: flag }, children: { Format: { children: { Line: LINE } } } },
    Format: { children: { Font: FONT } },
  },
};

const CHART_TYPES = [
  "XYScatter",
  "XYScatterLines",
  "XYScatterLinesNoMarkers",
  "ColumnClustered",
  "BarClustered",
  "Line",
];

/** `Chart`, less its series and its place. */
export const CHART: Shape = {
  scalars: { Name: text, ChartType: oneOf(...CHART_TYPES) },
  children: {
    Title: TITLE,
    Axes: { children: { CategoryAxis: AXIS, ValueAxis: AXIS } },
    Format: { children: { Fill: FILL, Border: LINE } },
  },
};

export const LEGEND: Shape = {
  scalars: { Visible: flag, Position: oneOf("Top", "Bottom", "Left", "Right", "Corner") },
};

export const LEGEND_ENTRY: Shape = { scalars: { Visible: flag } };

/** Behind "=" the service looks for cells, and finds none in what is only called so. From memory. */
export const seriesName: Check = (value) => text(value) && !String(value).startsWith("=");

/** `ChartSeries`, less its cells. */
export const SERIES: Shape = {
  scalars: {
    Name: seriesName,
    ChartType: oneOf(...CHART_TYPES),
    MarkerSize: between(2, 72),
    MarkerStyle: oneOf(
      ...["Automatic", "None", "Square", "Diamond", "Triangle", "X", "Star", "Dot", "Dash", "Circle", "Plus"],
    ),
    MarkerBackgroundColor: colour,
    MarkerForegroundColor: colour,
  },
  children: { Format: { children: { Fill: FILL, Line: LINE } } },
};

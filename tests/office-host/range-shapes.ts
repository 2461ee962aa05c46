import { any, between, colour, flag, oneOf, type Shape, text } from "./shapes.ts";

const EDGES = "EdgeTop EdgeBottom EdgeLeft EdgeRight InsideVertical InsideHorizontal".split(" ");

const FILL: Shape = {
  scalars: { Color: colour },
  methods: { Clear: (store) => store.set("Color", "") },
};

const BORDER: Shape = {
  scalars: {
    Style: oneOf("None", "Continuous", "Dash", "DashDot", "DashDotDot", "Dot", "Double", "SlantDashDot"),
    Weight: oneOf("Hairline", "Thin", "Medium", "Thick"),
    Color: colour,
  },
};

/** `Range.format` */
export const RANGE_FORMAT: Shape = {
  scalars: {
    HorizontalAlignment: oneOf("General", "Left", "Center", "Right", "Fill", "Justify"),
    VerticalAlignment: oneOf("Top", "Center", "Bottom", "Justify", "Distributed"),
    WrapText: flag,
    ColumnWidth: between(0, 1440),
    RowHeight: between(0, 409.5),
  },
  children: {
    Fill: FILL,
    Font: {
      scalars: {
        Bold: flag,
        Italic: flag,
        Color: colour,
        Size: between(1, 409),
        Name: text,
        Strikethrough: flag,
      },
    },
    Borders: { keys: { allowed: EDGES, shape: BORDER } },
  },
};

/** `Range.dataValidation` */
export const VALIDATION: Shape = {
  scalars: { Rule: any, Prompt: any, ErrorAlert: any },
};

/** `ConditionalFormat.custom` */
export const CUSTOM_CONDITION: Shape = {
  children: {
    Rule: { scalars: { Formula: text } },
    Format: {
      children: {
        Fill: FILL,
        Font: { scalars: { Bold: flag, Italic: flag, Color: colour, Strikethrough: flag } },
      },
    },
  },
};

/** `Worksheet.pageLayout`, less what needs ranges */
export const PAGE_LAYOUT: Shape = {
  scalars: { Orientation: oneOf("Portrait", "Landscape"), Zoom: any },
  children: {
    HeadersFooters: { children: { DefaultForAllPages: { scalars: { CenterFooter: text } } } },
  },
};

import { INK, RULE } from "./styles.ts";

/** How a native chart looks, in the spreadsheet and in a file; sizes and weights in points. */
export const CHART_LOOK = {
  background: "#ffffff",
  border: RULE,
  /** Of titles and of the figures along the axes. */
  ink: INK,
  titleSize: 13,
  axisTitleSize: 10,
  gridline: "#ddd9cc",
  gridlineWeight: 0.5,
} as const;

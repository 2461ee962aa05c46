import type { ConditionStyleName, StyleName } from "./plan.ts";

/** How a cell looks. Colours are `#rrggbb`; each text colour has a contrast of at least 4.5 to 1 on its fill. */
export interface CellStyle {
  readonly bold: boolean;
  readonly italic: boolean;
  /** Points. */
  readonly size: number;
  readonly color: string;
  readonly fill?: string;
  readonly align: "left" | "center" | "right" | "general";
  readonly vertical: "top" | "middle";
  readonly wrap: boolean;
  readonly border: "none" | "below" | "above" | "box";
  /** Colour of the border where there is one. */
  readonly borderColor: string;
}

/** The house colours: bench green, slate and paper. */
export const INK = "#1f2a30";
/** Headings and titles. */
export const GREEN = "#1d5c4a";
/** Behind the names of groups. */
export const PAPER = "#f3f1ea";
/** Lines between cells. */
export const RULE = "#b9b4a4";

const base: CellStyle = {
  bold: false,
  italic: false,
  size: 11,
  color: INK,
  align: "general",
  vertical: "middle",
  wrap: false,
  border: "none",
  borderColor: RULE,
};

/** The looks a plan may name, each whole, so that a later one leaves nothing of an earlier one. */
export const STYLES: Readonly<Record<StyleName, CellStyle>> = {
  plain: base,
  title: { ...base, bold: true, size: 18, color: GREEN },
  subtitle: { ...base, size: 12, color: "#4c5960" },
  label: { ...base, color: "#4c5960" },
  heading: { ...base, bold: true, color: "#ffffff", fill: GREEN },
  headingCentre: { ...base, bold: true, color: "#ffffff", fill: GREEN, align: "center", wrap: true },
  headingLeft: { ...base, bold: true, color: "#ffffff", fill: GREEN, wrap: true },
  group: { ...base, bold: true, fill: PAPER, border: "below" },
  figure: { ...base, align: "right" },
  figureStrong: { ...base, bold: true, align: "right" },
  faint: { ...base, color: "#5d6970", align: "right" },
  sentence: { ...base, wrap: true },
  sentenceStrong: { ...base, bold: true, size: 13, wrap: true, color: GREEN },
  warning: { ...base, wrap: true, color: "#7a3b00", fill: "#fdf0dc" },
  input: { ...base, fill: "#fffbe6", border: "box" },
  small: { ...base, size: 9, color: "#4c5960", wrap: true },
};

/** What changes in a cell while a condition holds; the rest of its look stays. */
export interface ConditionStyle {
  readonly color: string;
  readonly fill?: string;
  readonly bold?: boolean;
  readonly strike?: boolean;
}

/** The looks a condition may name. */
export const CONDITION_STYLES: Readonly<Record<ConditionStyleName, ConditionStyle>> = {
  dimmed: { color: "#767676", strike: true },
  good: { color: "#14532d", fill: "#dcefe3" },
  bad: { color: "#7f1d1d", fill: "#f8e0de" },
  alert: { color: "#7a3b00", fill: "#fdf0dc", bold: true },
};

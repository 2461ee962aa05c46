import type { SheetPlan } from "../../src/sheets/plan.ts";

/** A sheet in sight with nothing on it, for plans that are written out by hand. */
export const EMPTY_SHEET: Omit<SheetPlan, "name"> = {
  blocks: [],
  styles: [],
  formats: [],
  widths: [],
  heights: [],
  merges: [],
  tables: [],
  ticks: [],
  validations: [],
  conditions: [],
  charts: [],
  notes: [],
  hidden: false,
};

import type { ChartPlan, PrintPlan } from "../../sheets/plan.ts";

/** What the grid has no place for, kept beside it by the id of the sheet, for the file that may be saved. */
export interface Remembered {
  readonly charts: readonly ChartPlan[];
  readonly print?: PrintPlan;
}

/** By the id of the sheet. */
export type Memory = Map<string, Remembered>;

import type { SheetPlan } from "./plan.ts";

/** Whether a sheet shows its grid: one that holds a table is for working in, one that is read and printed is calmer without. */
export const showsGridlines = ({ tables }: Pick<SheetPlan, "tables">): boolean => tables.length > 0;

import type { Column } from "./schema.ts";

/** The number format that a workbook shows a column in. */
export function columnFormat({ type, decimals }: Column): string {
  if (type === "text") return "@";
  if (type === "day") return "yyyy-mm-dd";
  if (type === "truth") return "General";
  return type === "whole" || decimals === 0 ? "0" : `0.${"0".repeat(decimals)}`;
}

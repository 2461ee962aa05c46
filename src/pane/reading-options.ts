import type { ReadOptions } from "../shots/read-options.ts";
import type { Draft } from "./draft.ts";

/** The fitter's corrections as the reader takes them. */
export function readOptions(corrections: Draft["corrections"], leftHanded: boolean): ReadOptions {
  const columns: Record<number, NonNullable<ReadOptions["columns"]>[number]> = {};
  const units: Record<number, string> = {};
  for (const [column, { key, unit }] of Object.entries(corrections)) {
    if (key !== undefined) columns[Number(column)] = key;
    if (unit) units[Number(column)] = unit;
  }
  return { columns, units, leftHanded };
}

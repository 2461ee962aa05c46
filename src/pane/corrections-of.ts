import type { Mapping } from "../hosts/remember-mapping.ts";
import type { Correction, Draft } from "./draft.ts";

/** A remembered mapping as the corrections of a session. */
export function correctionsOf({ columns = {}, units = {} }: Mapping): Draft["corrections"] {
  const numbers = new Set([...Object.keys(columns), ...Object.keys(units)].map(Number));
  const corrections: Record<string, Correction> = {};
  for (const column of numbers) {
    const key = columns[column];
    const unit = units[column];
    corrections[column] = { ...(key === undefined ? {} : { key }), ...(unit ? { unit } : {}) };
  }
  return corrections;
}

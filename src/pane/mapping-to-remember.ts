import type { Mapping } from "../hosts/remember-mapping.ts";
import type { Draft } from "./draft.ts";
import { readOptions } from "./reading-options.ts";

/** What was put right about the table of a session. */
export interface Corrected extends Pick<Draft, "id" | "corrections"> {
  /** Of the table's headings; empty where it has none. */
  readonly signature: string;
}

/**
 * What is to be remembered of a table's columns after a change; null where nothing is. Corrections that were all taken
 * back are forgotten, so that they do not come back with the next such table.
 */
export function mappingToRemember(before: Corrected | null, now: Corrected): Mapping | null {
  if (now.signature === "") return null;
  const takenBack =
    before?.id === now.id && before.signature === now.signature && Object.keys(before.corrections).length > 0;
  if (Object.keys(now.corrections).length === 0 && !takenBack) return null;
  const { columns = {}, units = {} } = readOptions(now.corrections, false);
  return { columns, units };
}

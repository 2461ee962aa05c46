import type { Host } from "../hosts/host.ts";
import { mapLedgerText } from "../ledger/map-ledger-text.ts";
import { type MappedSheet, mapTrackingSheet, type TrackingOptions } from "../ledger/map-tracking-sheet.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";

/** Somebody's sheet as it was read, what was said about it since, and what it becomes. */
export interface BroughtIn {
  /** Kept, for the selection in the sheet moves on while it is being looked at. */
  readonly text: string;
  readonly options: TrackingOptions;
  readonly mapped: MappedSheet;
}

/** Reads the selected cells as somebody's own sheet. Nothing in it is changed, and nothing is kept yet. */
export async function bringInSelected(host: Host): Promise<Outcome<BroughtIn>> {
  const text = await host.selection();
  return isProblem(text) ? text : bringInText(text);
}

/** The same from a text; one that was exported from a ledger is known by its headings. */
export function bringInText(text: string, options: TrackingOptions = {}): Outcome<BroughtIn> {
  const exported = mapLedgerText(text);
  const mapped = isProblem(exported) ? mapTrackingSheet(text, options) : exported;
  return isProblem(mapped) ? mapped : { text, options, mapped };
}

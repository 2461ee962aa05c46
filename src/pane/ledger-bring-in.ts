import type { Host } from "../hosts/host.ts";
import { type MappedSheet, mapTrackingSheet } from "../ledger/map-tracking-sheet.ts";
import type { DayOrder } from "../ledger/tracking-dates.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";

/** Reads the selected cells as somebody's own tracking sheet. Nothing in it is changed, and nothing is kept yet. */
export async function bringInTracking(host: Host, days?: DayOrder): Promise<Outcome<MappedSheet>> {
  const text = await host.selection();
  if (isProblem(text)) return text;
  return mapTrackingSheet(text, days ? { days } : {});
}

import type { WireObject } from "./wire-object.ts";
import type { HeldSheet, HeldWorkbook } from "./workbook.ts";

/** The methods by which the client library begins and ends to hear of changes on a sheet. */
export const watching = (workbook: HeldWorkbook, sheet: HeldSheet): NonNullable<WireObject["methods"]> => ({
  _RegisterDataChangedEvent: () => void workbook.watched.add(sheet.id),
  _UnregisterDataChangedEvent: () => void workbook.watched.delete(sheet.id),
});

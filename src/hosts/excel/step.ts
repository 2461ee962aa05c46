import { areaName } from "../../sheets/a1.ts";
import type { Area } from "../../sheets/plan.ts";

/** A piece of writing that is never divided between two requests. */
export interface Step {
  /** About how many bytes it adds to a request. */
  readonly bytes: number;
  /** Queues its calls; nothing is sent yet. */
  readonly queue: (desk: Desk) => void;
}

/** What steps write with. One for each request, so that cells named twice travel once. */
export interface Desk {
  readonly workbook: Excel.Workbook;
  sheet(name: string): Excel.Worksheet;
  range(sheet: string, area: Area): Excel.Range;
}

/** Bytes of a call and of the object it is made on, counted generously: measured are about 100. */
export const CALL = 150;

/** A desk for one request. */
export function deskOf(workbook: Excel.Workbook): Desk {
  const sheets = new Map<string, Excel.Worksheet>();
  const ranges = new Map<string, Excel.Range>();
  const sheet = (name: string) => remembered(sheets, name, () => workbook.worksheets.getItem(name));
  return {
    workbook,
    sheet,
    range(name, area) {
      const address = areaName(area);
      return remembered(ranges, `${name}!${address}`, () => sheet(name).getRange(address));
    },
  };
}

function remembered<T>(held: Map<string, T>, key: string, make: () => T): T {
  const found = held.get(key) ?? make();
  held.set(key, found);
  return found;
}

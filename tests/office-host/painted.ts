import type { Area } from "../../src/sheets/plan.ts";
import { covers, overlap } from "./addresses.ts";
import type { Store } from "./shapes.ts";
import type { HeldSheet } from "./workbook.ts";

/** Keeps the properties of an area as paint on its sheet. Reading answers null where the cells differ. */
export function paintStore(sheet: HeldSheet, area: Area, prefix: string): Store {
  return {
    set: (path, value) => void sheet.paints.push({ area, property: `${prefix}${path}`, value }),
    get: (path) => painted(sheet, area, `${prefix}${path}`),
  };
}

/** The paint that counts for an area: of the last coat, if that covers it whole. */
export function painted(sheet: HeldSheet, area: Area, property: string): unknown {
  for (let i = sheet.paints.length - 1; i >= 0; i--) {
    const coat = sheet.paints[i]!;
    if (coat.property !== property) continue;
    if (covers(coat.area, area)) return coat.value;
    if (overlap(coat.area, area)) return null;
  }
  return null;
}

import type { Table } from "../../src/ledger/cell.ts";

/** A ledger in the first form, with a column of the shop's own. */
export const FIRST_FORM: Table = {
  headings: [
    "Row",
    "Session",
    "Date",
    "Player",
    "Build",
    "Shaft (g)",
    "Kept",
    "Carry mean (yd)",
    "Carry SD (yd)",
    "Spin mean (rpm)",
    "Verdict",
    "Chance (%)",
    "Ordered",
    "Invoice",
  ],
  rows: [
    ["s1-1", "s1", 46000, "Tess Marlow", "85 g mid", 85, 6, 151.25, 4.5, null, "clear", 97, "yes", "H-1"],
    ["s1-2", "s1", 46000, "Tess Marlow", "95 g mid", 95, 5, 148.5, 5.125, 5900, "clear", 3, "no", null],
    ["s2-1", "s2", 46010, "Ivo Brandt", "105 g low", null, 7, 163, null, 5400, null, null, null, "H-9"],
  ],
};

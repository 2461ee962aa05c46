import { LEDGER, SHOTS } from "../../src/ledger/schema.ts";
import { shopFindings } from "../../src/ledger/shop-findings.ts";
import { shopWorkbook } from "../../src/ledger/shop-sheet.ts";
import { tableSheet } from "../../src/ledger/table-sheet.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import type { WorkbookPlan } from "../../src/sheets/plan.ts";
import { atOnce } from "../../src/slices/at-once.ts";
import { demoRows, demoShots } from "./demo-rows.ts";
import { simulatedLedger } from "./simulated-ledger.ts";

/** The sheets that the ledger writes: its two tables, and the Shop sheet over many sessions. */
export function ledgerWorkbook(): WorkbookPlan {
  const sheets = [
    tableSheet(LEDGER, demoRows(), LEDGER.sheet, false),
    tableSheet(SHOTS, demoShots(), SHOTS.sheet, true),
    ...shopWorkbook(atOnce(shopFindings(simulatedLedger(200, 3))), NOTHING_TAKEN, "2026-11-25 10:00 UTC")
      .sheets,
  ];
  return { sheets, names: [], active: LEDGER.sheet };
}

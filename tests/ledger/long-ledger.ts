import type { Row } from "../../src/ledger/cell.ts";
import { LEDGER, SHOTS } from "../../src/ledger/schema.ts";
import { tableSheet } from "../../src/ledger/table-sheet.ts";
import type { WorkbookPlan } from "../../src/sheets/plan.ts";
import { demoShots, laterSession, rowsOfSession } from "./demo-rows.ts";
import { simulatedLedger } from "./simulated-ledger.ts";

/**
 * A shop's workbook after years: so many archived shots, 24 a session, every session of theirs in the ledger, and among
 * them an earlier fitting of the demo session's player.
 */
export function longLedger(shots: number): WorkbookPlan {
  const model = demoShots();
  const sessions = Math.ceil(shots / model.length);
  const ledger = [
    ...rowsOfSession(laterSession({ date: "2025-03-01" }, -2)),
    ...simulatedLedger(sessions - 1, 1),
  ];
  const archive = Array.from({ length: shots }, (_, i): Row => {
    const [session, shot] = [`s${Math.floor(i / model.length)}`, (i % model.length) + 1];
    const carry = Number(model[i % model.length]!.carry) + Math.sin(i) * 9;
    return { ...model[i % model.length], shotKey: `${session}-${shot}`, session, carry };
  });
  const sheets = [
    tableSheet(LEDGER, ledger, LEDGER.sheet, false),
    tableSheet(SHOTS, archive, SHOTS.sheet, true),
  ];
  return { sheets, names: [], active: LEDGER.sheet };
}

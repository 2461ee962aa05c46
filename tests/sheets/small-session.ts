import { compareBuilds } from "../../src/fitting/compare-builds.ts";
import { type Session, type SessionFacts, sessionOf } from "../../src/fitting/session.ts";
import { SheetDraft } from "../../src/sheets/sheet-draft.ts";
import { shotsLayout } from "../../src/sheets/shots-layout.ts";
import { workingsLayout } from "../../src/sheets/workings-sheet.ts";
import type { MetricKey } from "../../src/shots/metrics.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";

/**
 * Eight invented shots that one can work out by hand. Build A, the baseline, carries 152 yd on average (SD 2) and lies at
 * 0 (SD 3); B carries 163 (SD 3) and lies at 5 (SD the root of 13), with one launch angle missing; C was hit once; the
 * seventh shot is unticked. Means of launch: 20 (SD 2), 15 (SD the root of 2), 15.
 */
const TEXT = [
  "Keep,Build,Launch Angle (deg),Carry (yd),Offline (yd)",
  "TRUE,A,18,150,-3",
  "TRUE,B,16,160,2",
  "TRUE,A,20,152,0",
  "TRUE,B,14,163,4",
  "TRUE,A,22,154,3",
  "TRUE,B,,166,9",
  "FALSE,A,30,100,40",
  "TRUE,C,15,140,1",
].join("\n");

export function smallSession(facts: SessionFacts = {}): Session {
  return sessionOf(answer(readShots(TEXT)), { title: "Small", baseline: "A", ...facts });
}

/** The session with these figures of a metric, shot by shot. */
export function withFigures(session: Session, key: MetricKey, figures: readonly number[]): Session {
  const values = new Map([...session.table.values, [key, Float64Array.from(figures)] as const]);
  return { ...session, table: { ...session.table, values } };
}

/** What the parts of a Comparison sheet are drawn from, and sheets to draw them on. */
export function smallParts(session: Session = smallSession()) {
  const shots = shotsLayout(session, "Shots");
  return {
    session,
    comparison: compareBuilds(session),
    shots,
    layout: workingsLayout(session, shots, "Workings"),
    draft: new SheetDraft("Comparison"),
    workings: new SheetDraft("Workings"),
  };
}

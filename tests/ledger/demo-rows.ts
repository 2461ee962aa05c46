import { decide } from "../../src/fitting/decide.ts";
import { DEMO_FACTS, DEMO_TEXT } from "../../src/fitting/demo.ts";
import { type Session, type SessionFacts, sessionOf } from "../../src/fitting/session.ts";
import type { Row } from "../../src/ledger/cell.ts";
import { ledgerRows } from "../../src/ledger/ledger-rows.ts";
import { LEDGER } from "../../src/ledger/schema.ts";
import { shotRows } from "../../src/ledger/shot-rows.ts";
import { isProblem, type Outcome } from "../../src/outcome/problem.ts";
import { readShots } from "../../src/shots/read-shots.ts";

/** The invented demo session, with other facts where asked. */
export function demoSession(facts: SessionFacts = {}, text = DEMO_TEXT): Session {
  return sessionOf(answer(readShots(text)), { ...DEMO_FACTS, ...facts });
}

/** Another session of the same builds: the demo's carries moved by so many yards, so that it is another one. */
export function laterSession(facts: SessionFacts = {}, yards = 1): Session {
  const session = demoSession(facts);
  const carry = session.table.values.get("carry")!.map((value) => value + yards);
  return {
    ...session,
    table: { ...session.table, values: new Map(session.table.values).set("carry", carry) },
  };
}

export const rowsOfSession = (session: Session) => ledgerRows(session, decide(session));
export const demoRows = () => rowsOfSession(demoSession());
export const demoShots = () => shotRows(demoSession());

/** Rows as a table gives them back: what they say nothing of is empty in a ledger that had no such row. */
export const asHeld = (rows: readonly Row[]): Row[] =>
  rows.map((row) => ({ ...Object.fromEntries(LEDGER.columns.map(({ key }) => [key, null])), ...row }));

export function answer<T>(outcome: Outcome<T>): T {
  if (isProblem(outcome)) throw new Error(outcome.message);
  return outcome;
}

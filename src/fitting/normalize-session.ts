import type { Air } from "../flight/air/air.ts";
import { normalizeTable } from "../flight/uses/normalize-table.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { Session } from "./session.ts";
import { sessionAir } from "./session-air.ts";
import { sessionModel } from "./session-calibration.ts";
import { sessionShot } from "./session-shots.ts";

/**
 * The carry of every shot at standard sea-level air, yards, by the calibrated model where the session has one;
 * NaN where a shot has no carry or cannot be flown. Yields the share done after each few milliseconds.
 */
export function normalizeWork(session: Session, air: Air): Generator<number, Float64Array> {
  const { table } = session;
  const nothing = new Float64Array(table.size).fill(Number.NaN);
  return normalizeTable({
    size: table.size,
    carry: table.values.get("carry") ?? nothing,
    strike: (index) => sessionShot(table, index)?.strike ?? UNKNOWN,
    air,
    options: sessionModel(session),
  });
}

/**
 * The same with a pause after each slice: the share done is told and the page gets its turn, so that a table of 100,000
 * shots leaves the pane alive. Stops early, with nothing, once `goOn` answers false.
 */
export async function normalizeSession(
  session: Session,
  told: (share: number) => void = () => {},
  goOn: () => boolean = () => true,
): Promise<Outcome<Float64Array> | null> {
  const air = sessionAir(session.air);
  if (isProblem(air)) return air;
  const work = normalizeWork(session, air);
  for (;;) {
    const turn = work.next();
    if (turn.done) {
      told(1);
      return turn.value;
    }
    told(turn.value);
    await new Promise((resume) => setTimeout(resume));
    if (!goOn()) return null;
  }
}

/** No flight can be computed for it, so that its carry stays missing. */
const UNKNOWN = { speed: Number.NaN, launch: Number.NaN, spin: Number.NaN };

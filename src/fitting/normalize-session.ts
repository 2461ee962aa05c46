import type { Air } from "../flight/air/air.ts";
import { normalizeTable } from "../flight/uses/normalize-table.ts";
import type { Session } from "./session.ts";
import { sessionModel } from "./session-calibration.ts";
import { sessionShot } from "./session-shots.ts";

/**
 * The carry of every shot at standard sea-level air, yards, by the calibrated model where the session has one;
 * NaN where a shot has no carry or cannot be flown. Yields the share done after each few milliseconds.
 */
export function normalizeSession(session: Session, air: Air): Generator<number, Float64Array> {
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

/** No flight can be computed for it, so that its carry stays missing. */
const UNKNOWN = { speed: Number.NaN, launch: Number.NaN, spin: Number.NaN };

import { metricOf } from "../shots/metrics.ts";
import { fillSession } from "./fill-session.ts";
import type { Session } from "./session.ts";

/**
 * The session with carry, peak height and landing angle computed where the table lacks them, and those figures
 * listed in `computed`, so that sheets and `--json` mark them. Only where the fitter has asked for it.
 */
export function filledSession(session: Session): Session {
  const { table, computed, notes } = fillSession(session);
  if (computed.size === 0) return { ...session, table: { ...table, notes: [...table.notes, ...notes] } };
  return { ...session, table: { ...table, notes: [...table.notes, ...notes] }, computed };
}

/** A sentence for each metric that holds computed figures; none where all were measured. */
export function computedWords({ computed, table }: Session): string[] {
  return [...(computed ?? [])].map(([key, shots]) => {
    const label = metricOf(key).label;
    const whose = shots.size === table.size ? "every shot" : `${shots.size} of ${table.size} shots`;
    return `${label} of ${whose} is computed from ball speed, launch angle and spin, not measured: read it as an estimate.`;
  });
}

/** "Computed, not measured: carry, peak height." for one shot; null where all of it was measured. */
export function computedRemark({ computed }: Session, shot: number): string | null {
  const keys = [...(computed ?? [])].flatMap(([key, shots]) =>
    shots.has(shot) ? [metricOf(key).label.toLowerCase()] : [],
  );
  return keys.length === 0 ? null : `Computed, not measured: ${keys.join(", ")}.`;
}

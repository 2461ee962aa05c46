import { UNIT_SIZES } from "../flight/cells/unit-sizes.ts";
import { type FilledFigure, fillFlight } from "../flight/uses/fill-flight.ts";
import { isProblem } from "../outcome/problem.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import type { ShotTable } from "../shots/shot-table.ts";
import type { Session } from "./session.ts";
import { sessionAir } from "./session-air.ts";
import { sessionCalibration, sessionModel } from "./session-calibration.ts";
import { sessionShots } from "./session-shots.ts";

/** A table with its gaps filled by computed flights, and which figures those are. */
export interface FilledSession {
  readonly table: ShotTable;
  /** By metric, the shots (counted from 0) of which the figure was computed; measured columns are not in it. */
  readonly computed: ReadonlyMap<MetricKey, ReadonlySet<number>>;
  readonly notes: readonly string[];
}

const IN_SI: Readonly<Record<FilledFigure, number>> = {
  carry: UNIT_SIZES.yd,
  height: UNIT_SIZES.ft,
  landingAngle: 1,
};

/**
 * Fills missing carry, peak height and landing angle from ball speed, launch and spin in the session's air. The session
 * itself is left as it is: a computed figure never stands in a table without being listed in `computed`. Where the
 * session's own flights settle the calibration, the calibrated model is taken.
 */
export function fillSession(session: Session): FilledSession {
  const known = filledBefore.get(session);
  if (known) return known;
  const filled = fill(session);
  filledBefore.set(session, filled);
  return filled;
}

/** Several answers ask for the same session, and a long table takes a while. */
const filledBefore = new WeakMap<Session, FilledSession>();

function fill(session: Session): FilledSession {
  const { table } = session;
  const air = sessionAir(session.air);
  if (isProblem(air)) return { table, computed: new Map(), notes: [air.message] };
  const shots = sessionShots(table).filter((shot) =>
    FIGURES.some((figure) => Number.isNaN(shot[figure] ?? Number.NaN)),
  );
  if (shots.length === 0) return { table, computed: new Map(), notes: [] };
  const calibration = sessionCalibration(session);
  const filled = fillFlight(shots, air, sessionModel(session));
  const values = new Map(table.values);
  const computed = new Map<MetricKey, Set<number>>();
  let outside = 0;
  filled.forEach((flight, place) => {
    if (isProblem(flight)) return;
    if (flight.outside) outside += 1;
    for (const figure of flight.computed) {
      const marked = computed.get(figure) ?? new Set<number>();
      if (marked.size === 0) {
        const empty = new Float64Array(table.size).fill(Number.NaN);
        values.set(figure, Float64Array.from(table.values.get(figure) ?? empty));
      }
      const { index } = shots[place]!;
      values.get(figure)![index] = flight[figure] / IN_SI[figure];
      computed.set(figure, marked.add(index));
    }
  });
  const notes = [...computed].map(([key, marked]) => {
    const label = metricOf(key).label;
    const how = isProblem(calibration)
      ? "by the flight model alone"
      : "by the flight model fitted to this session's flights";
    return `${label} of ${marked.size} of ${table.size} shots was computed, not measured, ${how}.`;
  });
  if (outside > 0)
    notes.push(`${outside} of these flights leave the range that was measured in wind tunnels.`);
  return { table: { ...table, values }, computed, notes };
}

const FIGURES = ["carry", "height", "landingAngle"] as const satisfies readonly FilledFigure[];

import type { ModelCalibration } from "../flight/calibration/calibrate-models.ts";
import { isProblem } from "../outcome/problem.ts";
import { fillSession } from "./fill-session.ts";
import { type BuildHolding, greenWords } from "./green-words.ts";
import { type MeanFlight, meanFlight } from "./mean-flight.ts";
import { type SameConditions, sameConditions } from "./same-conditions.ts";
import type { Session } from "./session.ts";
import { sessionAir } from "./session-air.ts";
import { sessionCalibration } from "./session-calibration.ts";

/** All that the flight model says of a session. */
export interface SessionFlight {
  /** kg/m3; null where the stated air makes no sense. */
  readonly density: number | null;
  readonly airStated: boolean;
  /** Null where the session's flights do not settle it. */
  readonly calibration: ModelCalibration | null;
  /** In the order of the builds; those that cannot be flown are left out. */
  readonly same: readonly SameConditions[];
  readonly flights: readonly MeanFlight[];
  readonly green: readonly BuildHolding[];
  /** Full sentences: what was assumed, what was computed. */
  readonly notes: readonly string[];
}

/** Gathers what the flight model says of a session; empty lists where a table has no ball speed, launch and spin. */
export function sessionFlight(session: Session): SessionFlight {
  const air = sessionAir(session.air);
  const same = sameConditions(session);
  const calibration = sessionCalibration(session);
  const flights = session.builds.flatMap(({ name }) => {
    const flight = meanFlight(session, name);
    return isProblem(flight) ? [] : [flight];
  });
  const flown = !isProblem(same) && same.length > 0;
  return {
    density: isProblem(air) ? null : air.density,
    airStated: !isProblem(air) && air.stated,
    calibration: isProblem(calibration) ? null : calibration,
    same: isProblem(same) ? [] : same,
    flights,
    green: greenWords(session),
    notes: [
      ...(isProblem(air) ? [air.message] : []),
      ...(flown && !isProblem(air) && !air.stated ? [NOT_STATED] : []),
      ...fillSession(session).notes,
    ],
  };
}

const NOT_STATED = "Air not stated: taken for standard air at sea level, so that carries stay as measured.";

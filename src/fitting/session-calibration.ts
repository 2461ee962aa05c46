import { calibrateModels, type ModelCalibration } from "../flight/calibration/calibrate-models.ts";
import type { FlightOptions } from "../flight/trajectory/fly-ball.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { Session } from "./session.ts";
import { sessionAir } from "./session-air.ts";
import { sessionShots } from "./session-shots.ts";

/** How much more or less drag and lift the bay's flights show than the model's, with 95 % limits, from the kept shots. */
export function sessionCalibration(session: Session): Outcome<ModelCalibration> {
  const known = calibratedBefore.get(session);
  if (known) return known;
  const air = sessionAir(session.air);
  const kept = () => sessionShots(session.table).filter(({ index }) => session.table.keep[index]);
  const found = isProblem(air) ? air : calibrateModels(kept(), air);
  calibratedBefore.set(session, found);
  return found;
}

/** Several answers ask for the same session. */
const calibratedBefore = new WeakMap<Session, Outcome<ModelCalibration>>();

/** The flight model that follows this session's own flights, or the plain one where they do not settle it. */
export function sessionModel(session: Session): FlightOptions {
  const found = sessionCalibration(session);
  return isProblem(found) ? {} : { model: found.model, factors: found.factors };
}

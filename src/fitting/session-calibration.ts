import { type Calibration, calibrate } from "../flight/calibration/calibrate.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { Session } from "./session.ts";
import { sessionAir } from "./session-air.ts";
import { sessionShots } from "./session-shots.ts";

/**
 * How much more or less drag and lift the bay's flights show than the model's, with 95 % limits, from the kept shots.
 *
 * The figures fill what a table lacks (`fillSession`), where they take most of the model's bias away. Corrections to
 * other air and other speed do without them. In a simulation, 24 shots of a 150 yd iron from 1,600 m to sea level with a
 * truth that is not the model's, the plain ratio erred by at most 0.9 yd and the calibrated one by up to 2.2 yd: two
 * factors fit the thin air but not how drag goes with Reynolds number, while in a ratio the bias cancels by itself.
 */
export function sessionCalibration(session: Session): Outcome<Calibration> {
  const air = sessionAir(session.air);
  if (isProblem(air)) return air;
  const kept = sessionShots(session.table).filter(({ index }) => session.table.keep[index]);
  return calibrate(kept, air);
}

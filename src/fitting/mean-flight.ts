import { mean } from "simple-statistics";
import { UNIT_SIZES } from "../flight/cells/unit-sizes.ts";
import { flightPath } from "../flight/trajectory/flight-path.ts";
import type { Strike } from "../flight/trajectory/strike.ts";
import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import type { MetricKey } from "../shots/metrics.ts";
import { buildValues } from "./build-values.ts";
import type { Session } from "./session.ts";
import { type SessionAir, sessionAir } from "./session-air.ts";
import { sessionModel } from "./session-calibration.ts";
import { sessionShots } from "./session-shots.ts";

/** A build's mean flight seen from the side. */
export interface MeanFlight {
  readonly build: string;
  /** From strike to landing: yards ahead, feet up. */
  readonly points: readonly { readonly ahead: number; readonly height: number }[];
}

/** The mean strike of a build's kept shots, straight at the target; null where none can be flown. */
export function meanStrike(session: Session, build: string): Strike | null {
  const strikes = sessionShots(session.table, build).map(({ strike }) => strike);
  if (strikes.length === 0) return null;
  const of = (key: "speed" | "launch" | "spin") => mean(strikes.map((strike) => strike[key]));
  return { speed: of("speed"), launch: of("launch"), spin: of("spin") };
}

/**
 * The computed flight of a build's mean strike in the session's air, for drawing. Where mean carry and peak height were
 * measured it is stretched to end and to peak there, so that the picture never contradicts the table; only its shape
 * between those is the model's.
 */
export function meanFlight(session: Session, build: string, points = 31): Outcome<MeanFlight> {
  const air = sessionAir(session.air);
  if (isProblem(air)) return air;
  const path = pathOf(session, build, air, points);
  if (isProblem(path)) return path;
  const measured = (key: MetricKey, otherwise: number) => {
    const values = buildValues(session.table, build, key);
    return values.length === 0 ? otherwise : mean(values);
  };
  const end = path.at(-1)!.x / UNIT_SIZES.yd;
  const top = path.reduce((most, { y }) => Math.max(most, y), 0) / UNIT_SIZES.ft;
  const long = end > 0 ? measured("carry", end) / end : 1;
  const high = top > 0 ? measured("height", top) / top : 1;
  return {
    build,
    points: path.map(({ x, y }, at) => ({
      ahead: (x / UNIT_SIZES.yd) * long,
      height: at === path.length - 1 ? 0 : Math.max(0, (y / UNIT_SIZES.ft) * high),
    })),
  };
}

function pathOf(session: Session, build: string, air: SessionAir, points: number) {
  const strike = meanStrike(session, build);
  if (!strike) return unavailable(`${build} has no kept shot with ball speed, launch angle and spin.`);
  return flightPath(strike, air, sessionModel(session), points);
}

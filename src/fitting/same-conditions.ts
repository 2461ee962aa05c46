import { mean, median } from "simple-statistics";
import { UNIT_SIZES } from "../flight/cells/unit-sizes.ts";
import type { FlightOptions } from "../flight/trajectory/fly-ball.ts";
import { atClubSpeed, carryOfChanged } from "../flight/uses/at-club-speed.ts";
import { REFERENCE_AIR } from "../flight/uses/normalize-carry.ts";
import { usualSmash } from "../flight/uses/strike-adjusted-carry.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import { buildValues } from "./build-values.ts";
import { fillSession } from "./fill-session.ts";
import type { Session } from "./session.ts";
import { type SessionAir, sessionAir } from "./session-air.ts";
import { sessionModel } from "./session-calibration.ts";
import { type FlownShot, sessionShots } from "./session-shots.ts";

/** A build's mean carry as it was, and with one difference after the other between builds taken out. Yards. */
export interface SameConditions {
  readonly build: string;
  readonly metric: "carry";
  /** Mean of the kept shots; null where none was measured. */
  readonly measured: number | null;
  /** The same strikes in standard air at sea level. */
  readonly sameAir: number;
  /** In that air, every swing at `clubSpeed`; null where club speed was not measured. */
  readonly sameAirSameSpeed: number | null;
  /** In that air, at that speed, every strike with the session's usual smash factor. */
  readonly strikeAdjusted: number | null;
  /** The session's median club speed, mph. */
  readonly clubSpeed: number | null;
  /** Shots that were flown. */
  readonly shots: number;
  /** Of these, shots of which the carry was computed, not measured. */
  readonly computed: number;
}

/** No more shots of a build than this are flown, evenly picked; the rest have a part in the measured mean alone. */
export const MOST_FLOWN = 300;

/**
 * Each build's mean carry in the same air, then also at one club speed, then also with the usual strike. Each step is
 * the measured mean times the ratio of two sums of computed carries, by the model calibrated to the session where its
 * flights settle that, so that what bias remains cancels. Builds that cannot be flown are left
 * out: they need ball speed, launch angle and spin.
 *
 * "Same speed" takes smash factor and spin loft as they were; "usual strike" takes launch and spin as they were. A build
 * that itself makes a player swing faster or strike better is held back by them, so the measured figure stands beside.
 */
export function sameConditions(session: Session): Outcome<SameConditions[]> {
  const air = sessionAir(session.air);
  if (isProblem(air)) return air;
  const { table, computed } = fillSession(session);
  const byBuild = session.builds.map(({ name }) => sessionShots(table, name));
  const speeds = byBuild.flat().map((shot) => shot.clubSpeed);
  const known = speeds.filter((speed) => speed > 0);
  const clubSpeed = known.length === 0 ? null : median(known);
  const smash = usualSmash(byBuild.flat());
  const model = sessionModel(session);
  return session.builds.flatMap(({ name }, place) => {
    const flown = evenly(byBuild[place]!).filter((shot) => (shot.carry ?? Number.NaN) > 1);
    if (flown.length === 0) return [];
    const measured = buildValues(session.table, name, "carry");
    const own = mean(measured.length > 0 ? measured : flown.map((shot) => shot.carry! / UNIT_SIZES.yd));
    const scaled = (figure: (shot: FlownShot) => number | undefined) => {
      const ratio = ratioOver(flown, figure);
      return ratio === null ? null : own * ratio;
    };
    const sameAir = scaled((shot) => changed(shot, shot.strike, air, model));
    if (sameAir === null) return [];
    return {
      build: name,
      metric: "carry" as const,
      measured: measured.length === 0 ? null : own,
      sameAir,
      sameAirSameSpeed: scaled((shot) => atSpeed(shot, clubSpeed, air, model)?.carry),
      strikeAdjusted: scaled((shot) => withUsualStrike(shot, clubSpeed, smash, air, model)),
      clubSpeed: clubSpeed === null ? null : clubSpeed / UNIT_SIZES.mph,
      shots: flown.length,
      computed: flown.filter(({ index }) => computed.get("carry")?.has(index)).length,
    };
  });
}

function changed(
  shot: FlownShot,
  strike: FlownShot["strike"],
  air: SessionAir,
  model: FlightOptions,
): number | undefined {
  const answer = carryOfChanged(shot, strike, air, model, REFERENCE_AIR);
  return isProblem(answer) ? undefined : answer.carry;
}

function atSpeed(shot: FlownShot, clubSpeed: number | null, air: SessionAir, model: FlightOptions) {
  if (clubSpeed === null) return undefined;
  const answer = atClubSpeed(shot, clubSpeed, air, model, REFERENCE_AIR);
  return isProblem(answer) ? undefined : answer;
}

function withUsualStrike(
  shot: FlownShot,
  clubSpeed: number | null,
  smash: Outcome<number>,
  air: SessionAir,
  model: FlightOptions,
): number | undefined {
  const swung = atSpeed(shot, clubSpeed, air, model);
  if (!swung || clubSpeed === null || isProblem(smash)) return undefined;
  return changed(shot, { ...swung.strike, speed: clubSpeed * smash }, air, model);
}

/** Sum of a figure over the sum of the carries, of the shots that have it; null where fewer than half of them do. */
function ratioOver(
  shots: readonly FlownShot[],
  figure: (shot: FlownShot) => number | undefined,
): number | null {
  let [sum, carries, count] = [0, 0, 0];
  for (const shot of shots) {
    const one = figure(shot);
    if (one === undefined) continue;
    sum += one;
    carries += shot.carry!;
    count += 1;
  }
  return count === 0 || count < shots.length / 2 ? null : sum / carries;
}

function evenly(shots: readonly FlownShot[]): readonly FlownShot[] {
  if (shots.length <= MOST_FLOWN) return shots;
  return Array.from({ length: MOST_FLOWN }, (_, at) => shots[Math.floor((at * shots.length) / MOST_FLOWN)]!);
}

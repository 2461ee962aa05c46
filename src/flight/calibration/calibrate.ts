import { isProblem, type Outcome, unavailable } from "../../outcome/problem.ts";
import { tQuantile } from "../../stats/t-quantile.ts";
import type { Air } from "../air/air.ts";
import { type FlightOptions, flyBall } from "../trajectory/fly-ball.ts";
import { isMeasured, type MeasuredShot } from "../uses/measured-shot.ts";
import { fitTwo } from "./fit-two.ts";

/** A factor on drag or lift with its 95 % limits. */
export interface Factor {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The two factors that fit the model to the bay, and how well they do. */
export interface Calibration {
  readonly drag: Factor;
  readonly lift: Factor;
  /** Shots used. */
  readonly shots: number;
  /** Measured figures used. */
  readonly figures: number;
  /** Residual standard deviation in units of `SCALE`: near 1 when the model follows the bay as well as monitors repeat. */
  readonly residual: number;
  /** The two factors as a flight's options take them. */
  readonly factors: { readonly drag: number; readonly lift: number };
}

/**
 * What a difference of each figure counts as 1: metres of carry and of height, degrees of landing angle. About what
 * launch monitors agree within (common practice, no source); only their ratios matter to the factors.
 */
const SCALE = { carry: 2, height: 1, landingAngle: 1 } as const;

/** More shots than this are thinned evenly: the factors are known well enough long before. */
const MOST_SHOTS = 300;
/** Flights are some centimetres out by it, where a difference of two metres counts as one; half the time saved. */
const ROUGHLY = 1e-3;
const KEYS = ["carry", "height", "landingAngle"] as const;

/**
 * Fits two factors, on drag and on lift, so that the model's carry, height and landing angle come nearest to a
 * session's own in the sense of least squares. Limits are those of linear regression at the best place: standard error
 * times Student's t at 95 %, figures less 2 degrees of freedom.
 *
 * `unavailable` below three shots, without any height or landing angle (carry alone does not tell less drag from more
 * lift), when fewer than four figures are measured, or when the fit does not settle.
 */
export function calibrate(
  shots: readonly MeasuredShot[],
  air: Air,
  options: FlightOptions = {},
): Outcome<Calibration> {
  const used = thinned(
    shots.filter(
      (shot) =>
        KEYS.some((key) => isMeasured(shot[key])) &&
        !isProblem(flyBall(shot.strike, air, { tolerance: ROUGHLY, ...options })),
    ),
  );
  if (used.length < 3) {
    return unavailable(
      `a calibration needs three shots with carry and height or landing angle, not ${used.length}`,
    );
  }
  if (!used.some((shot) => isMeasured(shot.height) || isMeasured(shot.landingAngle))) {
    return unavailable(
      "a calibration needs heights or landing angles: carry alone does not tell drag from lift",
    );
  }
  const figures = used.reduce((count, shot) => count + KEYS.filter((key) => isMeasured(shot[key])).length, 0);
  const fit = fitTwo((drag, lift) => residualsAt(used, air, options, figures, drag, lift), 1, 1);
  if (!fit || figures < 4) {
    return unavailable(
      "the measured flights do not settle drag and lift; more shots, or more figures a shot, would",
    );
  }
  const variance = fit.squares / (figures - 2);
  const reach = tQuantile(0.975, figures - 2);
  const factor = (value: number, spread: number): Factor => {
    const margin = reach * Math.sqrt(variance * spread);
    return { value, low: value - margin, high: value + margin };
  };
  return {
    drag: factor(fit.first, fit.inverse[0]),
    lift: factor(fit.second, fit.inverse[2]),
    shots: used.length,
    figures,
    residual: Math.sqrt(variance),
    factors: { drag: fit.first, lift: fit.second },
  };
}

function residualsAt(
  shots: readonly MeasuredShot[],
  air: Air,
  options: FlightOptions,
  figures: number,
  drag: number,
  lift: number,
): Float64Array | undefined {
  if (!(drag > 0.2 && drag < 5 && lift > 0 && lift < 5)) return undefined;
  const residuals = new Float64Array(figures);
  let at = 0;
  for (const shot of shots) {
    const flight = flyBall(shot.strike, air, { tolerance: ROUGHLY, ...options, factors: { drag, lift } });
    if (isProblem(flight)) return undefined;
    for (const key of KEYS) {
      const measured = shot[key];
      if (isMeasured(measured)) residuals[at++] = (flight[key] - measured) / SCALE[key];
    }
  }
  return residuals;
}

function thinned(shots: readonly MeasuredShot[]): readonly MeasuredShot[] {
  if (shots.length <= MOST_SHOTS) return shots;
  return Array.from({ length: MOST_SHOTS }, (_, at) => shots[Math.floor((at * shots.length) / MOST_SHOTS)]!);
}

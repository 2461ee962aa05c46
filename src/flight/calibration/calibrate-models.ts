import { isProblem, type Outcome } from "../../outcome/problem.ts";
import type { Air } from "../air/air.ts";
import type { CoefficientModel } from "../ball/coefficient-model.ts";
import { EXTENDED_BEARMAN_HARVEY } from "../ball/extended-bearman-harvey.ts";
import { SMITS_SMITH } from "../ball/smits-smith.ts";
import type { MeasuredShot } from "../uses/measured-shot.ts";
import { type Calibration, calibrate } from "./calibrate.ts";

/** A calibration and the published coefficients that it scales. */
export interface ModelCalibration extends Calibration {
  readonly model: CoefficientModel;
}

/** How much more likely the second model must make the measured flights, as a natural logarithm: 20 times. */
const EVIDENCE = 3;
/** And how much nearer it must come to them, so that a long session's every nuance does not decide. */
const NEARER = 1.05;

/**
 * Calibrates the two published models to a session's flights and answers the one that follows them better: Bearman and
 * Harvey unless Smits and Smith is 20 times as likely and 5 % nearer. Two factors cannot take a model's shape away, how
 * drag and lift go with speed and spin, so the shape is chosen by the flights as well.
 *
 * Likelihood by normal errors of unknown spread: the logarithm of the ratio of the residuals, times the figures. The
 * bounds are common sense, not theory; `npm run bench -- flight` prints how corrections by the answer err for balls of
 * four different truths.
 */
export function calibrateModels(shots: readonly MeasuredShot[], air: Air): Outcome<ModelCalibration> {
  const first = calibrate(shots, air, { model: EXTENDED_BEARMAN_HARVEY });
  const second = calibrate(shots, air, { model: SMITS_SMITH });
  if (isProblem(first)) return first;
  const nearer = isProblem(second) ? 0 : first.residual / second.residual;
  return isProblem(second) || nearer < NEARER || first.figures * Math.log(nearer) < EVIDENCE
    ? { ...first, model: EXTENDED_BEARMAN_HARVEY }
    : { ...second, model: SMITS_SMITH };
}

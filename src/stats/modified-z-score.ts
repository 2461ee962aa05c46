import { mean, median } from "simple-statistics";
import { type Outcome, unavailable } from "../outcome/problem.ts";
import { type Numbers, present } from "./present.ts";

/** Beyond this a value is proposed as an outlier (Iglewicz and Hoaglin 1993). It is never removed unasked. */
export const outlierCutoff = 3.5;

/**
 * How far each value lies from the median, in spreads that a stray value cannot inflate: 0.6745 (x - median) / MAD,
 * MAD being the median absolute deviation (Iglewicz and Hoaglin 1993, How to Detect and Handle Outliers;
 * NIST/SEMATECH e-Handbook 1.3.5.17). Beyond 3.5 either way a value is proposed as an outlier.
 *
 * When more than half of the values are equal the MAD is 0. Then the mean absolute deviation stands in, times
 * 1.253314, the square root of pi / 2, which makes it agree with the standard deviation of normal values. When all
 * values are equal every score is 0.
 *
 * The answer has the length of the question: a missing value (NaN) keeps its place with a score of NaN, the one
 * place where this folder answers NaN, so that scores and shots stay in step.
 */
export function modifiedZScores(values: Numbers): Outcome<number[]> {
  const known = present(values);
  if (known.length === 0) return unavailable("There are no values to screen; at least one number is needed.");
  const centre = median(known);
  const deviations = known.map((value) => Math.abs(value - centre));
  const mad = median(deviations);
  const unit = mad > 0 ? mad / 0.6745 : 1.253314 * mean(deviations);
  if (!Number.isFinite(unit))
    return unavailable("The values are too far apart to screen in double precision.");
  return Array.from(values, (value) => {
    if (!Number.isFinite(value)) return Number.NaN;
    return unit === 0 ? 0 : (value - centre) / unit;
  });
}

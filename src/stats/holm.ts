import { invalid, type Outcome } from "../outcome/problem.ts";

/**
 * Probabilities of several tests, adjusted so that the chance of even one false alarm among them stays below the
 * level they are held against (Holm 1979, Scandinavian Journal of Statistics 6, 65-70). They come back in the order
 * they were given.
 *
 * `holm([0.01, 0.04, 0.03, 0.005])` is `[0.03, 0.06, 0.06, 0.02]`.
 */
export function holm(pValues: readonly number[]): Outcome<number[]> {
  const stray = pValues.find((p) => !(p >= 0 && p <= 1));
  if (stray !== undefined) return invalid(`A probability is ${stray}; each must lie between 0 and 1.`);
  const adjusted = new Array<number>(pValues.length);
  let largest = 0;
  pValues
    .map((p, place) => ({ p, place }))
    .sort((a, b) => a.p - b.p)
    .forEach(({ p, place }, rank) => {
      largest = Math.max(largest, Math.min(1, p * (pValues.length - rank)));
      adjusted[place] = largest;
    });
  return adjusted;
}

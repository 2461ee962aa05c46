import type { Belief } from "./belief.ts";
import { integrate } from "./integrate.ts";

/**
 * For each of several unknown means the chance that it is the highest: its density, times the chance that all others
 * lie below, integrated.
 */
export function chancesHighest(beliefs: readonly Belief[]): number[] {
  // Below `low` some mean is certain to be higher; above `high` none lies.
  const low = Math.max(...beliefs.map(({ centre, scale, reach }) => centre - reach * scale));
  const high = Math.max(...beliefs.map(({ centre, scale, reach }) => centre + reach * scale));
  return firstPastThePost(beliefs, low, high, (belief, x) => {
    const z = (x - belief.centre) / belief.scale;
    return { density: belief.density(z) / belief.scale, losing: belief.upperTail(-z) };
  });
}

/** For each the chance that it lies nearest to `target`: the same, with distances for values. */
export function chancesNearest(beliefs: readonly Belief[], target: number): number[] {
  const shifted = beliefs.map((belief) => ({ ...belief, centre: Math.abs(belief.centre - target) }));
  const high = Math.min(...shifted.map(({ centre, scale, reach }) => centre + reach * scale));
  return firstPastThePost(shifted, 0, high, (belief, distance) => {
    const right = (distance - belief.centre) / belief.scale;
    const left = (distance + belief.centre) / belief.scale;
    return {
      density: (belief.density(right) + belief.density(left)) / belief.scale,
      losing: belief.upperTail(right) + belief.upperTail(left),
    };
  });
}

/**
 * The integrals from `low` to `high` of each density times all others' chances of losing against x. The variable is
 * x = c + s sinh(y), which brings the far tails of few degrees of freedom near (Takahasi and Mori 1974 use the like).
 */
function firstPastThePost(
  beliefs: readonly Belief[],
  low: number,
  high: number,
  at: (belief: Belief, x: number) => { density: number; losing: number },
): number[] {
  const centres = beliefs.map(({ centre }) => Math.min(high, Math.max(low, centre)));
  const middle = Math.max(...centres);
  const unit = Math.min(...beliefs.map(({ scale }) => scale));
  const breaks = [low, ...centres, high]
    .map((x) => Math.asinh((x - middle) / unit))
    .sort((a, b) => a - b)
    .filter((y, i, all) => i === 0 || y > all[i - 1]!);
  return integrate((y) => {
    const found = beliefs.map((belief) => at(belief, middle + unit * Math.sinh(y)));
    const stretch = unit * Math.cosh(y);
    return found.map(({ density }, i) =>
      found.reduce((product, other, j) => (j === i ? product : product * other.losing), density * stretch),
    );
  }, breaks);
}

import type { Belief } from "./belief.ts";
import { integrate } from "./integrate.ts";

/**
 * For each of several unknown means the chance that it is the highest: its density, times the chance that all others
 * lie below, integrated. `tolerance` as in `integrate`.
 */
export function chancesHighest(beliefs: readonly Belief[], tolerance: number): number[] {
  // Below `low` some mean is certain to be higher; above `high` none lies.
  const low = Math.max(...beliefs.map(({ centre, scale, reach }) => centre - reach * scale));
  const high = Math.max(...beliefs.map(({ centre, scale, reach }) => centre + reach * scale));
  return firstPastThePost(beliefs, low, high, tolerance, (belief, x) => {
    const z = (x - belief.centre) / belief.scale;
    return { density: belief.density(z) / belief.scale, losing: belief.upperTail(-z) };
  });
}

/** For each the chance that it lies nearest to `target`: the same, with distances for values. */
export function chancesNearest(beliefs: readonly Belief[], target: number, tolerance: number): number[] {
  const shifted = beliefs.map((belief) => ({ ...belief, centre: Math.abs(belief.centre - target) }));
  const high = Math.min(...shifted.map(({ centre, scale, reach }) => centre + reach * scale));
  return firstPastThePost(shifted, 0, high, tolerance, (belief, distance) => {
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
 * y in x = c + s sinh(y), in which the far tails of few degrees of freedom are near.
 */
function firstPastThePost(
  beliefs: readonly Belief[],
  low: number,
  high: number,
  tolerance: number,
  at: (belief: Belief, x: number) => { density: number; losing: number },
): number[] {
  const middle = Math.max(...beliefs.map(({ centre }) => centre));
  const unit = Math.min(...beliefs.map(({ scale }) => scale));
  const toY = (x: number) => Math.asinh((x - middle) / unit);
  const breaks = [low, ...bends(beliefs).filter((x) => x > low && x < high), high].map(toY);
  const chances = (y: number) => {
    const found = beliefs.map((belief) => at(belief, middle + unit * Math.sinh(y)));
    const stretch = unit * Math.cosh(y);
    return found.map(({ density }, i) =>
      found.reduce((product, other, j) => (j === i ? product : product * other.losing), density * stretch),
    );
  };
  return integrate(chances, breaks, tolerance);
}

/**
 * Where the integrand may bend: the middle and the shoulders of each belief. Sharp ones come first and stay; a bend
 * that a kept one precedes or follows by less than its own scale adds nothing.
 */
function bends(beliefs: readonly Belief[]): number[] {
  const kept: number[] = [];
  for (const { centre, scale } of [...beliefs].sort((a, b) => a.scale - b.scale)) {
    for (const x of [centre, centre - 6 * scale, centre + 6 * scale]) {
      if (kept.every((other) => Math.abs(other - x) > scale)) kept.push(x);
    }
  }
  return kept.sort((a, b) => a - b);
}

import { KNOT, type Knots, STRIDE } from "./knots.ts";

/**
 * One coordinate between two knots: the polynomial of fifth degree that meets place, velocity and acceleration at both
 * ends. Set once a step, then asked many times.
 */
export class StepCurve {
  private h = 1;
  private c0 = 0;
  private c1 = 0;
  private c2 = 0;
  private c3 = 0;
  private c4 = 0;
  private c5 = 0;

  /** Takes the step from knot `index` to the next; `axis` is 0, 1, 2 for x, y, z. */
  set(knots: Knots, index: number, axis: number): this {
    const d = knots.data;
    const from = index * STRIDE;
    const to = from + STRIDE;
    const h = d[to]! - d[from]!;
    const first = h * d[from + 4 + axis]!;
    const second = (h * h * d[from + 8 + axis]!) / 2;
    const gap = d[to + 1 + axis]! - d[from + 1 + axis]! - first - second;
    const slope = h * d[to + 4 + axis]! - first - 2 * second;
    const bend = h * h * d[to + 8 + axis]! - 2 * second;
    this.h = h;
    this.c0 = d[from + 1 + axis]!;
    this.c1 = first;
    this.c2 = second;
    this.c3 = 10 * gap - 4 * slope + bend / 2;
    this.c4 = -15 * gap + 7 * slope - bend;
    this.c5 = 6 * gap - 3 * slope + bend / 2;
    return this;
  }

  /** Where it is, `part` of the way in time. */
  place(part: number): number {
    return (
      this.c0 + part * (this.c1 + part * (this.c2 + part * (this.c3 + part * (this.c4 + part * this.c5))))
    );
  }

  /** Its velocity there. */
  velocity(part: number): number {
    const bent = 3 * this.c3 + part * (4 * this.c4 + part * 5 * this.c5);
    return (this.c1 + part * (2 * this.c2 + part * bent)) / this.h;
  }

  /** Where in the step it stops rising, 0 to 1; 0 when it does not rise at the start, 1 when it rises to the end. */
  top(): number {
    if (this.c1 < 0 || (this.c1 === 0 && this.c2 <= 0)) return 0;
    if (this.velocity(1) > 0) return 1;
    return this.turningPoint(this.c1 === 0 ? 1e-6 : 0);
  }

  /**
   * Where between `from` and the end it falls through `level`, given that it does. Newton, kept in a bracket, begun where a
   * parabola with its top at `from` would fall through: a landing is not far from one.
   */
  fallThrough(level: number, from: number): number {
    const { c0, c1, c2, c3, c4, c5 } = this;
    let low = from;
    let high = 1;
    const top = this.place(from);
    // Stryker disable all: only where the search begins; the bracket leads from any place to the same one
    const begun = from + (1 - from) * Math.sqrt((top - level) / (top - this.place(1)));
    let part = begun >= from && begun <= 1 ? begun : 1;
    // Stryker restore all
    // Stryker disable next-line all: halving alone settles in 27 turns; the bound is never met
    for (let turn = 0; turn < 80; turn += 1) {
      const above = c0 + part * (c1 + part * (c2 + part * (c3 + part * (c4 + part * c5)))) - level;
      if (above > 0) low = part;
      else high = part;
      // Stryker disable next-line all: a wrong slope costs turns only; the bracket closes in on the same place
      const slope = c1 + part * (2 * c2 + part * (3 * c3 + part * (4 * c4 + part * 5 * c5)));
      const next = part - above / slope;
      const kept = next > low && next < high ? next : (low + high) / 2;
      if (Math.abs(kept - part) < 1e-8) return kept;
      part = kept;
    }
    return part;
  }

  /** Where the velocity passes from plus to minus between `from` and the end. Newton, kept in a bracket. */
  private turningPoint(from: number): number {
    let low = from;
    let high = 1;
    const atStart = this.velocity(low);
    // Stryker disable next-line all: only where the search begins; the bracket leads from any place to the same one
    let part = low + ((high - low) * atStart) / (atStart - this.velocity(high));
    // Stryker disable next-line all: halving alone settles in 20 rounds; the bound is never met
    for (let round = 0; round < 60; round += 1) {
      const velocity = this.velocity(part);
      if (velocity > 0) low = part;
      else high = part;
      // Stryker disable next-line all: a wrong slope costs rounds only; the bracket closes in on the same place
      const bent = 6 * this.c3 + part * (12 * this.c4 + part * 20 * this.c5);
      const next = part - (velocity * this.h) / (2 * this.c2 + part * bent);
      const kept = next > low && next < high ? next : (low + high) / 2;
      if (Math.abs(kept - part) < 1e-6) return kept;
      part = kept;
    }
    return part;
  }
}

/** Spin between two knots: the cubic through both spins and their rates. */
export function spinBetween(knots: Knots, index: number, part: number): number {
  const d = knots.data;
  const from = index * STRIDE;
  const to = from + STRIDE;
  const h = d[to]! - d[from]!;
  const atStart = d[from + KNOT.spin]!;
  const rise = d[to + KNOT.spin]! - atStart;
  const first = h * d[from + KNOT.slowing]!;
  const last = h * d[to + KNOT.slowing]!;
  return atStart + part * (first + part * (3 * rise - 2 * first - last + part * (first + last - 2 * rise)));
}

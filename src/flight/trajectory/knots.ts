/** Places of one knot's figures in `Knots.data`: SI, spin in rpm, x to the target, y up, z to the right. */
// biome-ignore format: a row for each kind of figure
export const KNOT = {
  time: 0, x: 1, y: 2, z: 3,
  vx: 4, vy: 5, vz: 6, spin: 7,
  ax: 8, ay: 9, az: 10, slowing: 11,
} as const;
/** Figures that one knot takes. */
export const STRIDE = 12;

/** The accepted steps of one flight, in one flat array that is used again for the next flight. */
export class Knots {
  data = new Float64Array(STRIDE * 256);
  count = 0;

  /** Makes sure that one more knot fits. */
  reserve(): void {
    if ((this.count + 1) * STRIDE <= this.data.length) return;
    const larger = new Float64Array(this.data.length * 2);
    larger.set(this.data);
    this.data = larger;
  }
}

/** Places of one knot's figures in `Knots.data`: SI, spin in rpm, x to the target, y up, z to the right. */
export const KNOT = {
  time: 0,
  x: 1,
  y: 2,
  z: 3,
  vx: 4,
  vy: 5,
  vz: 6,
  ax: 7,
  ay: 8,
  az: 9,
  spin: 10,
  slowing: 11,
} as const;
export const STRIDE = 12;

/** The accepted steps of one flight, in one flat array that is used again for the next flight. */
export class Knots {
  data = new Float64Array(STRIDE * 256);
  count = 0;

  /** Opens room for one more knot and answers where it starts. */
  add(): number {
    const start = this.count * STRIDE;
    if (start + STRIDE > this.data.length) {
      const larger = new Float64Array(this.data.length * 2);
      larger.set(this.data);
      this.data = larger;
    }
    this.count += 1;
    return start;
  }
}

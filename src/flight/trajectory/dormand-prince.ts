import type { Forces } from "./forces.ts";
import { STRIDE } from "./knots.ts";

const A21 = 1 / 5;
const A31 = 3 / 40;
const A32 = 9 / 40;
const A41 = 44 / 45;
const A42 = -56 / 15;
const A43 = 32 / 9;
const A51 = 19372 / 6561;
const A52 = -25360 / 2187;
const A53 = 64448 / 6561;
const A54 = -212 / 729;
const A61 = 9017 / 3168;
const A62 = -355 / 33;
const A63 = 46732 / 5247;
const A64 = 49 / 176;
const A65 = -5103 / 18656;
const B1 = 35 / 384;
const B3 = 500 / 1113;
const B4 = 125 / 192;
const B5 = -2187 / 6784;
const B6 = 11 / 84;
/** Fifth-order less fourth-order weights. */
const E1 = 71 / 57600;
const E3 = -71 / 16695;
const E4 = 71 / 1920;
const E5 = -17253 / 339200;
const E6 = 22 / 525;
const E7 = -1 / 40;

/** What an error of 1 rpm counts as, m/s: enough that spin is followed where nothing else asks for short steps. */
const SPIN_WEIGHT = 1e-3;

/**
 * One step of the embedded Runge-Kutta pair of orders 5 and 4 with seven stages, the last of which is the first of the
 * next step. Source: J. R. Dormand and P. J. Prince, "A family of embedded Runge-Kutta formulae", Journal of
 * Computational and Applied Mathematics 6 (1980) 19-26, table 2; A, B and E above are its figures.
 *
 * The forces on a ball do not depend on where it is, so that only velocity and spin go through the stages; the
 * position is the same weights over the stages' velocities. Written out rather than looped, since nearly all the time of
 * a flight is spent here: v3y is the upward velocity at the third stage, k3y its rate, w the spin.
 */
export class DormandPrinceStep {
  private readonly state = new Float64Array(4);
  private readonly rates = new Float64Array(4);

  /**
   * Steps `h` seconds on from the knot at d[from] and writes the next knot behind it. Answers the error of the step in
   * metres, metres a second or 1000 rpm, whichever is most.
   */
  take(forces: Forces, d: Float64Array, from: number, h: number): number {
    const s = this.state;
    const k = this.rates;
    const to = from + STRIDE;
    const v1x = d[from + 4]!;
    const v1y = d[from + 5]!;
    const v1z = d[from + 6]!;
    const w1 = d[from + 7]!;
    const k1x = d[from + 8]!;
    const k1y = d[from + 9]!;
    const k1z = d[from + 10]!;
    const k1w = d[from + 11]!;

    const v2x = v1x + h * (A21 * k1x);
    const v2y = v1y + h * (A21 * k1y);
    const v2z = v1z + h * (A21 * k1z);
    s[3] = w1 + h * (A21 * k1w);
    s[0] = v2x;
    s[1] = v2y;
    s[2] = v2z;
    forces.rate(s, 0, k, 0);
    const k2x = k[0]!;
    const k2y = k[1]!;
    const k2z = k[2]!;
    const k2w = k[3]!;

    const v3x = v1x + h * (A31 * k1x + A32 * k2x);
    const v3y = v1y + h * (A31 * k1y + A32 * k2y);
    const v3z = v1z + h * (A31 * k1z + A32 * k2z);
    s[3] = w1 + h * (A31 * k1w + A32 * k2w);
    s[0] = v3x;
    s[1] = v3y;
    s[2] = v3z;
    forces.rate(s, 0, k, 0);
    const k3x = k[0]!;
    const k3y = k[1]!;
    const k3z = k[2]!;
    const k3w = k[3]!;

    const v4x = v1x + h * (A41 * k1x + A42 * k2x + A43 * k3x);
    const v4y = v1y + h * (A41 * k1y + A42 * k2y + A43 * k3y);
    const v4z = v1z + h * (A41 * k1z + A42 * k2z + A43 * k3z);
    s[3] = w1 + h * (A41 * k1w + A42 * k2w + A43 * k3w);
    s[0] = v4x;
    s[1] = v4y;
    s[2] = v4z;
    forces.rate(s, 0, k, 0);
    const k4x = k[0]!;
    const k4y = k[1]!;
    const k4z = k[2]!;
    const k4w = k[3]!;

    const v5x = v1x + h * (A51 * k1x + A52 * k2x + A53 * k3x + A54 * k4x);
    const v5y = v1y + h * (A51 * k1y + A52 * k2y + A53 * k3y + A54 * k4y);
    const v5z = v1z + h * (A51 * k1z + A52 * k2z + A53 * k3z + A54 * k4z);
    s[3] = w1 + h * (A51 * k1w + A52 * k2w + A53 * k3w + A54 * k4w);
    s[0] = v5x;
    s[1] = v5y;
    s[2] = v5z;
    forces.rate(s, 0, k, 0);
    const k5x = k[0]!;
    const k5y = k[1]!;
    const k5z = k[2]!;
    const k5w = k[3]!;

    const v6x = v1x + h * (A61 * k1x + A62 * k2x + A63 * k3x + A64 * k4x + A65 * k5x);
    const v6y = v1y + h * (A61 * k1y + A62 * k2y + A63 * k3y + A64 * k4y + A65 * k5y);
    const v6z = v1z + h * (A61 * k1z + A62 * k2z + A63 * k3z + A64 * k4z + A65 * k5z);
    s[3] = w1 + h * (A61 * k1w + A62 * k2w + A63 * k3w + A64 * k4w + A65 * k5w);
    s[0] = v6x;
    s[1] = v6y;
    s[2] = v6z;
    forces.rate(s, 0, k, 0);
    const k6x = k[0]!;
    const k6y = k[1]!;
    const k6z = k[2]!;
    const k6w = k[3]!;

    const v7x = v1x + h * (B1 * k1x + B3 * k3x + B4 * k4x + B5 * k5x + B6 * k6x);
    const v7y = v1y + h * (B1 * k1y + B3 * k3y + B4 * k4y + B5 * k5y + B6 * k6y);
    const v7z = v1z + h * (B1 * k1z + B3 * k3z + B4 * k4z + B5 * k5z + B6 * k6z);
    d[to + 7] = w1 + h * (B1 * k1w + B3 * k3w + B4 * k4w + B5 * k5w + B6 * k6w);
    d[to] = d[from]! + h;
    d[to + 1] = d[from + 1]! + h * (B1 * v1x + B3 * v3x + B4 * v4x + B5 * v5x + B6 * v6x);
    d[to + 2] = d[from + 2]! + h * (B1 * v1y + B3 * v3y + B4 * v4y + B5 * v5y + B6 * v6y);
    d[to + 3] = d[from + 3]! + h * (B1 * v1z + B3 * v3z + B4 * v4z + B5 * v5z + B6 * v6z);
    d[to + 4] = v7x;
    d[to + 5] = v7y;
    d[to + 6] = v7z;
    forces.rate(d, to + 4, d, to + 8);
    return (
      h *
      Math.max(
        Math.abs(E1 * k1x + E3 * k3x + E4 * k4x + E5 * k5x + E6 * k6x + E7 * d[to + 8]!),
        Math.abs(E1 * v1x + E3 * v3x + E4 * v4x + E5 * v5x + E6 * v6x + E7 * v7x),
        Math.abs(E1 * k1y + E3 * k3y + E4 * k4y + E5 * k5y + E6 * k6y + E7 * d[to + 9]!),
        Math.abs(E1 * v1y + E3 * v3y + E4 * v4y + E5 * v5y + E6 * v6y + E7 * v7y),
        Math.abs(E1 * k1z + E3 * k3z + E4 * k4z + E5 * k5z + E6 * k6z + E7 * d[to + 10]!),
        Math.abs(E1 * v1z + E3 * v3z + E4 * v4z + E5 * v5z + E6 * v6z + E7 * v7z),
        Math.abs(E1 * k1w + E3 * k3w + E4 * k4w + E5 * k5w + E6 * k6w + E7 * d[to + 11]!) * SPIN_WEIGHT,
      )
    );
  }
}

import { POINT } from "../ball/coefficient-model.ts";
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
 * position is the same weights over the stages' velocities. Written out rather than looped, and with `Forces.rate` written
 * into each stage, since nearly all the time of a flight is spent here (a call a stage costs a tenth of it). At the third
 * stage v3y is the upward velocity, k3y its rate, w3 the spin, u3x the velocity through the air, m3 its size, c3x the
 * direction of lift before it is scaled by its length q3.
 */
export class DormandPrinceStep {
  /**
   * Steps `h` seconds on from the knot at d[from] and writes the next knot behind it. Answers the error of the step in
   * metres, metres a second or 1000 rpm, whichever is most.
   */
  take(forces: Forces, d: Float64Array, from: number, h: number): number {
    const { model, point, axisX, axisY, axisZ, windAlong, windAcross, drag, lift, gravity, slowing } = forces;
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
    const w2 = w1 + h * (A21 * k1w);
    const u2x = v2x - windAlong;
    const u2z = v2z - windAcross;
    const p2 = Math.max(0, w2);
    const m2 = Math.sqrt(u2x * u2x + v2y * v2y + u2z * u2z);
    const c2x = axisY * u2z - axisZ * v2y;
    const c2y = axisZ * u2x - axisX * u2z;
    const c2z = axisX * v2y - axisY * u2x;
    const q2 = Math.sqrt(c2x * c2x + c2y * c2y + c2z * c2z);
    const g2 = q2 > 0 ? lift * m2 * (m2 / q2) : 0;
    point[POINT.speed] = m2;
    point[POINT.spin] = p2;
    point[POINT.reynolds] = forces.reynolds * m2;
    model.coefficients(point);
    const d2 = drag * m2 * point[POINT.drag]!;
    const l2 = g2 * point[POINT.lift]!;
    const k2x = l2 * c2x - d2 * u2x;
    const k2y = l2 * c2y - d2 * v2y - gravity;
    const k2z = l2 * c2z - d2 * u2z;
    const k2w = -slowing * p2 * m2;

    const v3x = v1x + h * (A31 * k1x + A32 * k2x);
    const v3y = v1y + h * (A31 * k1y + A32 * k2y);
    const v3z = v1z + h * (A31 * k1z + A32 * k2z);
    const w3 = w1 + h * (A31 * k1w + A32 * k2w);
    const u3x = v3x - windAlong;
    const u3z = v3z - windAcross;
    const p3 = Math.max(0, w3);
    const m3 = Math.sqrt(u3x * u3x + v3y * v3y + u3z * u3z);
    const c3x = axisY * u3z - axisZ * v3y;
    const c3y = axisZ * u3x - axisX * u3z;
    const c3z = axisX * v3y - axisY * u3x;
    const q3 = Math.sqrt(c3x * c3x + c3y * c3y + c3z * c3z);
    const g3 = q3 > 0 ? lift * m3 * (m3 / q3) : 0;
    point[POINT.speed] = m3;
    point[POINT.spin] = p3;
    point[POINT.reynolds] = forces.reynolds * m3;
    model.coefficients(point);
    const d3 = drag * m3 * point[POINT.drag]!;
    const l3 = g3 * point[POINT.lift]!;
    const k3x = l3 * c3x - d3 * u3x;
    const k3y = l3 * c3y - d3 * v3y - gravity;
    const k3z = l3 * c3z - d3 * u3z;
    const k3w = -slowing * p3 * m3;

    const v4x = v1x + h * (A41 * k1x + A42 * k2x + A43 * k3x);
    const v4y = v1y + h * (A41 * k1y + A42 * k2y + A43 * k3y);
    const v4z = v1z + h * (A41 * k1z + A42 * k2z + A43 * k3z);
    const w4 = w1 + h * (A41 * k1w + A42 * k2w + A43 * k3w);
    const u4x = v4x - windAlong;
    const u4z = v4z - windAcross;
    const p4 = Math.max(0, w4);
    const m4 = Math.sqrt(u4x * u4x + v4y * v4y + u4z * u4z);
    const c4x = axisY * u4z - axisZ * v4y;
    const c4y = axisZ * u4x - axisX * u4z;
    const c4z = axisX * v4y - axisY * u4x;
    const q4 = Math.sqrt(c4x * c4x + c4y * c4y + c4z * c4z);
    const g4 = q4 > 0 ? lift * m4 * (m4 / q4) : 0;
    point[POINT.speed] = m4;
    point[POINT.spin] = p4;
    point[POINT.reynolds] = forces.reynolds * m4;
    model.coefficients(point);
    const d4 = drag * m4 * point[POINT.drag]!;
    const l4 = g4 * point[POINT.lift]!;
    const k4x = l4 * c4x - d4 * u4x;
    const k4y = l4 * c4y - d4 * v4y - gravity;
    const k4z = l4 * c4z - d4 * u4z;
    const k4w = -slowing * p4 * m4;

    const v5x = v1x + h * (A51 * k1x + A52 * k2x + A53 * k3x + A54 * k4x);
    const v5y = v1y + h * (A51 * k1y + A52 * k2y + A53 * k3y + A54 * k4y);
    const v5z = v1z + h * (A51 * k1z + A52 * k2z + A53 * k3z + A54 * k4z);
    const w5 = w1 + h * (A51 * k1w + A52 * k2w + A53 * k3w + A54 * k4w);
    const u5x = v5x - windAlong;
    const u5z = v5z - windAcross;
    const p5 = Math.max(0, w5);
    const m5 = Math.sqrt(u5x * u5x + v5y * v5y + u5z * u5z);
    const c5x = axisY * u5z - axisZ * v5y;
    const c5y = axisZ * u5x - axisX * u5z;
    const c5z = axisX * v5y - axisY * u5x;
    const q5 = Math.sqrt(c5x * c5x + c5y * c5y + c5z * c5z);
    const g5 = q5 > 0 ? lift * m5 * (m5 / q5) : 0;
    point[POINT.speed] = m5;
    point[POINT.spin] = p5;
    point[POINT.reynolds] = forces.reynolds * m5;
    model.coefficients(point);
    const d5 = drag * m5 * point[POINT.drag]!;
    const l5 = g5 * point[POINT.lift]!;
    const k5x = l5 * c5x - d5 * u5x;
    const k5y = l5 * c5y - d5 * v5y - gravity;
    const k5z = l5 * c5z - d5 * u5z;
    const k5w = -slowing * p5 * m5;

    const v6x = v1x + h * (A61 * k1x + A62 * k2x + A63 * k3x + A64 * k4x + A65 * k5x);
    const v6y = v1y + h * (A61 * k1y + A62 * k2y + A63 * k3y + A64 * k4y + A65 * k5y);
    const v6z = v1z + h * (A61 * k1z + A62 * k2z + A63 * k3z + A64 * k4z + A65 * k5z);
    const w6 = w1 + h * (A61 * k1w + A62 * k2w + A63 * k3w + A64 * k4w + A65 * k5w);
    const u6x = v6x - windAlong;
    const u6z = v6z - windAcross;
    const p6 = Math.max(0, w6);
    const m6 = Math.sqrt(u6x * u6x + v6y * v6y + u6z * u6z);
    const c6x = axisY * u6z - axisZ * v6y;
    const c6y = axisZ * u6x - axisX * u6z;
    const c6z = axisX * v6y - axisY * u6x;
    const q6 = Math.sqrt(c6x * c6x + c6y * c6y + c6z * c6z);
    const g6 = q6 > 0 ? lift * m6 * (m6 / q6) : 0;
    point[POINT.speed] = m6;
    point[POINT.spin] = p6;
    point[POINT.reynolds] = forces.reynolds * m6;
    model.coefficients(point);
    const d6 = drag * m6 * point[POINT.drag]!;
    const l6 = g6 * point[POINT.lift]!;
    const k6x = l6 * c6x - d6 * u6x;
    const k6y = l6 * c6y - d6 * v6y - gravity;
    const k6z = l6 * c6z - d6 * u6z;
    const k6w = -slowing * p6 * m6;

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

import type { Forces } from "./forces.ts";

/**
 * One step of the embedded Runge-Kutta pair of orders 5 and 4 with seven stages, the last of which is the first of the
 * next step. Source: J. R. Dormand and P. J. Prince, "A family of embedded Runge-Kutta formulae", Journal of
 * Computational and Applied Mathematics 6 (1980) 19-26, table 2.
 *
 * The forces on a ball do not depend on where it is, so that only velocity and spin go through the stages; the
 * position is the same weights over the stages' velocities. Written out, not looped: this is where all the time goes.
 */
export class DormandPrinceStep {
  /** Position, velocity and spin at the end of the step: x, y, z, vx, vy, vz, spin. */
  readonly end = new Float64Array(7);
  /** Rates of vx, vy, vz and spin at the seven stages; rates[0..3] must hold those at the start of the step. */
  readonly rates = new Float64Array(28);
  private readonly stages = new Float64Array(28);

  /** Takes a step of `h` seconds from `from` and answers the error, metres or metres a second, whichever is more. */
  take(forces: Forces, from: Float64Array, h: number): number {
    const k = this.rates;
    const s = this.stages;
    const end = this.end;
    for (let c = 0; c < 4; c += 1) s[c] = from[c + 3]!;
    for (let c = 0; c < 4; c += 1) s[4 + c] = s[c]! + h * (k[c]! / 5);
    forces.rate(s[4]!, s[5]!, s[6]!, s[7]!, k, 4);
    for (let c = 0; c < 4; c += 1) s[8 + c] = s[c]! + h * ((3 / 40) * k[c]! + (9 / 40) * k[4 + c]!);
    forces.rate(s[8]!, s[9]!, s[10]!, s[11]!, k, 8);
    for (let c = 0; c < 4; c += 1) {
      s[12 + c] = s[c]! + h * ((44 / 45) * k[c]! - (56 / 15) * k[4 + c]! + (32 / 9) * k[8 + c]!);
    }
    forces.rate(s[12]!, s[13]!, s[14]!, s[15]!, k, 12);
    for (let c = 0; c < 4; c += 1) {
      s[16 + c] =
        s[c]! +
        h *
          ((19372 / 6561) * k[c]! -
            (25360 / 2187) * k[4 + c]! +
            (64448 / 6561) * k[8 + c]! -
            (212 / 729) * k[12 + c]!);
    }
    forces.rate(s[16]!, s[17]!, s[18]!, s[19]!, k, 16);
    for (let c = 0; c < 4; c += 1) {
      s[20 + c] =
        s[c]! +
        h *
          ((9017 / 3168) * k[c]! -
            (355 / 33) * k[4 + c]! +
            (46732 / 5247) * k[8 + c]! +
            (49 / 176) * k[12 + c]! -
            (5103 / 18656) * k[16 + c]!);
    }
    forces.rate(s[20]!, s[21]!, s[22]!, s[23]!, k, 20);
    for (let c = 0; c < 4; c += 1) {
      s[24 + c] = s[c]! + h * weigh(k, c);
      end[3 + c] = s[24 + c]!;
    }
    forces.rate(s[24]!, s[25]!, s[26]!, s[27]!, k, 24);
    let error = 0;
    for (let c = 0; c < 3; c += 1) {
      end[c] = from[c]! + h * weigh(s, c);
      error = Math.max(error, Math.abs(differ(k, c)), Math.abs(differ(s, c)));
    }
    return h * error;
  }
}

/** The fifth-order mean over the stages of component c. */
function weigh(stage: Float64Array, c: number): number {
  return (
    (35 / 384) * stage[c]! +
    (500 / 1113) * stage[8 + c]! +
    (125 / 192) * stage[12 + c]! -
    (2187 / 6784) * stage[16 + c]! +
    (11 / 84) * stage[20 + c]!
  );
}

/** How far the fourth-order mean lies from the fifth-order one. */
function differ(stage: Float64Array, c: number): number {
  return (
    (71 / 57600) * stage[c]! -
    (71 / 16695) * stage[8 + c]! +
    (71 / 1920) * stage[12 + c]! -
    (17253 / 339200) * stage[16 + c]! +
    (22 / 525) * stage[20 + c]! -
    (1 / 40) * stage[24 + c]!
  );
}

import { AREA_OVER_TWO_MASSES, BALL } from "../ball/ball.ts";
import { BEARMAN_HARVEY } from "../ball/bearman-harvey.ts";
import { type CoefficientModel, POINT } from "../ball/coefficient-model.ts";

/**
 * All that pushes a ball in flight, set once a flight and then asked many times. Mutable on purpose: one object serves
 * a hundred thousand flights.
 *
 * Drag is density x area x coefficient x speed^2 / 2 against the motion through the air, lift the same with its own
 * coefficient, square to the motion and to the spin axis (P. W. Bearman and J. K. Harvey, "Golf ball aerodynamics",
 * Aeronautical Quarterly 27 (1976) 112-122). Spin dies away in proportion to speed and spin.
 */
export class Forces {
  model: CoefficientModel = BEARMAN_HARVEY;
  gravity = 0;
  /** Spin lost: d(spin)/dt = -slowing x spin x speed; per metre. */
  slowing = 0;
  /** Wind in m/s: along to the target, across to the right. */
  windAlong = 0;
  windAcross = 0;
  /** The spin axis, a unit vector; it keeps its direction in flight. */
  axisX = 0;
  axisY = 0;
  axisZ = 1;
  /** Drag and lift in m/s2 for a coefficient and a squared speed of 1; Reynolds number for a speed of 1. */
  drag = 0;
  lift = 0;
  reynolds = 0;
  /** What the model is asked with and answers in. */
  readonly point = new Float64Array(5);

  /** Sets the air and the factors on drag and lift that a calibration found. */
  setAir(density: number, viscosity: number, dragFactor: number, liftFactor: number): void {
    this.drag = AREA_OVER_TWO_MASSES * density * dragFactor;
    this.lift = AREA_OVER_TWO_MASSES * density * liftFactor;
    this.reynolds = (BALL.diameter * density) / viscosity;
  }

  /**
   * Reads vx, vy, vz and spin at state[from..from + 3] and writes their rates to rates[at..at + 3]. Through arrays,
   * since numbers handed to a function that is not inlined are put on the heap one by one.
   */
  rate(state: Float64Array, from: number, rates: Float64Array, at: number): void {
    const ux = state[from]! - this.windAlong;
    const uy = state[from + 1]!;
    const uz = state[from + 2]! - this.windAcross;
    // A trial step that is too long may put the spin below 0, where the coefficients have no value.
    const spin = Math.max(0, state[from + 3]!);
    const speed = Math.sqrt(ux * ux + uy * uy + uz * uz);
    const crossX = this.axisY * uz - this.axisZ * uy;
    const crossY = this.axisZ * ux - this.axisX * uz;
    const crossZ = this.axisX * uy - this.axisY * ux;
    const cross = Math.sqrt(crossX * crossX + crossY * crossY + crossZ * crossZ);
    const point = this.point;
    point[POINT.speed] = speed;
    point[POINT.spin] = spin;
    point[POINT.reynolds] = this.reynolds * speed;
    this.model.coefficients(point);
    const drag = this.drag * point[POINT.drag]! * speed;
    const lift = cross > 0 ? this.lift * point[POINT.lift]! * speed * (speed / cross) : 0;
    rates[at] = lift * crossX - drag * ux;
    rates[at + 1] = lift * crossY - drag * uy - this.gravity;
    rates[at + 2] = lift * crossZ - drag * uz;
    rates[at + 3] = -this.slowing * spin * speed;
  }

  /** Whether the model's figures were measured at this speed through the air and spin. */
  measured(vx: number, vy: number, vz: number, spin: number): boolean {
    const ux = vx - this.windAlong;
    const uz = vz - this.windAcross;
    const speed = Math.sqrt(ux * ux + vy * vy + uz * uz);
    return this.model.measured(speed, spin, this.reynolds * speed);
  }
}

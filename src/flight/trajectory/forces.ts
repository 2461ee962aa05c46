import { AREA_OVER_TWO_MASSES, BALL } from "../ball/ball.ts";
import { BEARMAN_HARVEY } from "../ball/bearman-harvey.ts";
import type { CoefficientModel } from "../ball/coefficient-model.ts";

/**
 * All that pushes a ball in flight, set once a flight and then asked many times. Mutable on purpose: one object serves
 * a hundred thousand flights.
 */
export class Forces {
  model: CoefficientModel = BEARMAN_HARVEY;
  gravity = 0;
  /** Spin lost: d(spin)/dt = -decay x spin x speed / radius. */
  decay = 0;
  /** Wind in m/s: along to the target, across to the right. */
  windAlong = 0;
  windAcross = 0;
  /** The spin axis, a unit vector; it keeps its direction in flight. */
  axisX = 0;
  axisY = 0;
  axisZ = 1;
  private drag = 0;
  private lift = 0;
  private reynolds = 0;
  private readonly coefficients = new Float64Array(2);

  /** Sets the air and the factors on drag and lift that a calibration found. */
  setAir(density: number, viscosity: number, dragFactor: number, liftFactor: number): void {
    this.drag = AREA_OVER_TWO_MASSES * density * dragFactor;
    this.lift = AREA_OVER_TWO_MASSES * density * liftFactor;
    this.reynolds = (BALL.diameter * density) / viscosity;
  }

  /** Writes the rates of vx, vy, vz and spin to rates[at..at + 3]. */
  rate(vx: number, vy: number, vz: number, spin: number, rates: Float64Array, at: number): void {
    const ux = vx - this.windAlong;
    const uz = vz - this.windAcross;
    const speed = Math.sqrt(ux * ux + vy * vy + uz * uz);
    this.model.coefficients(speed, spin, this.reynolds * speed, this.coefficients);
    const crossX = this.axisY * uz - this.axisZ * vy;
    const crossY = this.axisZ * ux - this.axisX * uz;
    const crossZ = this.axisX * vy - this.axisY * ux;
    const cross = Math.sqrt(crossX * crossX + crossY * crossY + crossZ * crossZ);
    const drag = this.drag * this.coefficients[0]! * speed;
    const lift = cross > 0 ? (this.lift * this.coefficients[1]! * speed * speed) / cross : 0;
    rates[at] = lift * crossX - drag * ux;
    rates[at + 1] = lift * crossY - drag * vy - this.gravity;
    rates[at + 2] = lift * crossZ - drag * uz;
    rates[at + 3] = (-this.decay * spin * speed) / BALL.radius;
  }

  /** Whether the model's figures were measured at this speed through the air and spin. */
  measured(vx: number, vy: number, vz: number, spin: number): boolean {
    const speed = Math.hypot(vx - this.windAlong, vy, vz - this.windAcross);
    return this.model.measured(speed, spin, this.reynolds * speed);
  }
}

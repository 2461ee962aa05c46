import { Solver } from "odex";
import type { Air } from "../../src/flight/air/air.ts";
import { BALL, GRAVITY } from "../../src/flight/ball/ball.ts";
import type { CoefficientModel } from "../../src/flight/ball/coefficient-model.ts";
import { SPIN_DECAY } from "../../src/flight/trajectory/fly-ball.ts";
import { Forces } from "../../src/flight/trajectory/forces.ts";
import type { Strike } from "../../src/flight/trajectory/strike.ts";

/**
 * Carry in metres by the general ODE package, used as its documentation shows: seven equations, dense output for the
 * height alone until the ball is down, then Newton's method to the landing. The forces are the project's own.
 */
export function carryByOdex(strike: Strike, air: Air, model: CoefficientModel, tolerance: number): number {
  const forces = new Forces();
  forces.model = model;
  forces.gravity = GRAVITY;
  forces.slowing = SPIN_DECAY / BALL.radius;
  forces.setAir(air.density, air.viscosity, 1, 1);
  const tilt = ((strike.axis ?? 0) * Math.PI) / 180;
  forces.axisY = -Math.sin(tilt);
  forces.axisZ = Math.cos(tilt);
  const launch = (strike.launch * Math.PI) / 180;
  const rates = new Float64Array(4);
  const state = new Float64Array(4);
  const solver = new Solver(7);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  solver.denseOutput = true;
  solver.denseComponents = [0, 1];
  let carry = Number.NaN;
  solver.solve(
    (_time, y) => {
      for (let c = 0; c < 4; c += 1) state[c] = y[c + 3]!;
      forces.rate(state, 0, rates, 0);
      return [y[3]!, y[4]!, y[5]!, rates[0]!, rates[1]!, rates[2]!, rates[3]!];
    },
    0,
    [0, 0, 0, strike.speed * Math.cos(launch), strike.speed * Math.sin(launch), 0, strike.spin],
    60,
    (_step, before, now, y, dense) => {
      if (now === 0 || y[1]! >= 0 || y[4]! >= 0 || !dense) return true;
      let low = before;
      let high = now;
      while (high - low > 1e-9) {
        const middle = (low + high) / 2;
        if (dense(1, middle) >= 0) low = middle;
        else high = middle;
      }
      carry = dense(0, high);
      return false;
    },
  );
  return carry;
}

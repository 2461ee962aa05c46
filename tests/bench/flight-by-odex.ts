import type { Air } from "../../src/flight/air/air.ts";
import { BALL, GRAVITY } from "../../src/flight/ball/ball.ts";
import type { CoefficientModel } from "../../src/flight/ball/coefficient-model.ts";
import { SPIN_DECAY } from "../../src/flight/trajectory/fly-ball.ts";
import { Forces } from "../../src/flight/trajectory/forces.ts";
import type { Strike } from "../../src/flight/trajectory/strike.ts";
import { Solver } from "./odex.js";

type Dense = (component: number, time: number) => number;

/**
 * The same answers as `flyBall` by the general ODE package, used as its documentation shows: seven equations, dense
 * output, one tolerance, all else as it comes; apex and landing by bisection within the step that holds them. The forces
 * are the project's own.
 */
export function flyByOdex(strike: Strike, air: Air, model: CoefficientModel, tolerance: number) {
  const forces = forcesOn(strike, air, model);
  const launch = (strike.launch * Math.PI) / 180;
  const rates = new Float64Array(4);
  const state = new Float64Array(4);
  const solver = new Solver(7);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  solver.denseOutput = true;
  let rising = launch > 0;
  let height = 0;
  let landing: number[] = [];
  let time = 0;
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
      if (now === 0 || !dense) return true;
      if (rising && y[4]! < 0) height = dense(1, fallsThrough(dense, 4, before, now));
      rising = y[4]! >= 0;
      if (y[1]! >= 0 || rising) return true;
      time = fallsThrough(dense, 1, before, now);
      landing = [0, 1, 2, 3, 4, 5, 6].map((component) => dense(component, time));
      return false;
    },
  );
  const [carry, , offline, vx, vy, vz, landingSpin] = landing;
  const level = Math.hypot(vx!, vz!);
  const landingAngle = (Math.atan2(-vy!, level) * 180) / Math.PI;
  return {
    carry: carry!,
    offline,
    height,
    landingAngle,
    time,
    landingSpeed: Math.hypot(level, vy!),
    landingSpin,
  };
}

/** When a component passes from plus to minus. */
function fallsThrough(dense: Dense, component: number, from: number, to: number): number {
  let low = from;
  let high = to;
  while (high - low > 1e-7) {
    const middle = (low + high) / 2;
    if (dense(component, middle) >= 0) low = middle;
    else high = middle;
  }
  return high;
}

function forcesOn(strike: Strike, air: Air, model: CoefficientModel): Forces {
  const forces = new Forces();
  const tilt = ((strike.axis ?? 0) * Math.PI) / 180;
  forces.model = model;
  forces.gravity = GRAVITY;
  forces.slowing = SPIN_DECAY / BALL.radius;
  forces.axisY = -Math.sin(tilt);
  forces.axisZ = Math.cos(tilt);
  forces.setAir(air.density, air.viscosity, 1, 1);
  return forces;
}

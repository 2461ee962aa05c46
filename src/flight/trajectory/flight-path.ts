import { isProblem, type Outcome } from "../../outcome/problem.ts";
import type { Air } from "../air/air.ts";
import { within } from "../within.ts";
import { StepCurve } from "./between-knots.ts";
import { type FlightOptions, fly } from "./fly-ball.ts";
import { STRIDE } from "./knots.ts";
import type { Strike } from "./strike.ts";

/** A place on the way: metres to the target, up and to the right of the target line. */
export interface PathPoint {
  readonly time: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The way of a ball for drawing: `points` places from strike to landing, evenly spaced in time, 2 to 1000 of them. */
export function flightPath(
  strike: Strike,
  air: Air,
  options: FlightOptions = {},
  points = 60,
): Outcome<PathPoint[]> {
  const problem = within("points", points, 2, 1000);
  if (problem) return problem;
  const knots = fly(strike, air, options);
  if (isProblem(knots)) return knots;
  const curves = [new StepCurve(), new StepCurve(), new StepCurve()] as const;
  const timeOf = (knot: number) => knots.data[knot * STRIDE]!;
  const last = knots.count - 2;
  const upward = curves[1].set(knots, last, 1);
  const landing = upward.fallThrough(options.ground ?? 0, upward.top());
  const end = timeOf(last) + landing * (timeOf(last + 1) - timeOf(last));
  let step = 0;
  return Array.from({ length: Math.floor(points) }, (_, index) => {
    const time = (end * index) / (Math.floor(points) - 1);
    while (step < last && timeOf(step + 1) < time) step += 1;
    const part = (time - timeOf(step)) / (timeOf(step + 1) - timeOf(step));
    const [x, y, z] = curves.map((curve, axis) => curve.set(knots, step, axis).place(part));
    return { time, x: x!, y: y!, z: z! };
  });
}

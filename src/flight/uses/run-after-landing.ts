import type { Outcome } from "../../outcome/problem.ts";
import { BALL, GRAVITY, RADIANS_A_SECOND_PER_RPM } from "../ball/ball.ts";
import { within } from "../within.ts";

/** Drag of a fairway on a rolling ball, as a share of its weight. */
const ROLLING = 0.131;

/**
 * How far a ball runs after it lands on a level fairway, m: bounces until it hardly leaves the ground, fifty times at most,
 * then rolls. A ball that spins back far enough runs less than nothing. No turf is like another; take it for a rough figure.
 *
 * Source: A. R. Penner, "The run of a golf ball", Canadian Journal of Physics 80 (2002) 931-940: the ball meets turf that
 * it tips up by 15.4 degrees x (speed / 18.6) x (angle from the vertical / 44.4), restitution 0.510 - 0.0375 v + 0.000903 v^2 and 0.120
 * above 20 m/s, friction 0.40. The figures are from memory.
 *
 * @param speed landing speed, m/s
 * @param angle landing angle below the horizontal, degrees
 * @param spin landing spin, rpm
 */
export function runAfterLanding(speed: number, angle: number, spin: number): Outcome<number> {
  const problem =
    within("landing speed", speed, 0, 120, "m/s") ??
    within("landing angle", angle, 0, 90, "degrees") ??
    within("landing spin", spin, 0, 20_000, "rpm");
  if (problem) return problem;
  let forward = speed * Math.cos((angle * Math.PI) / 180);
  let down = speed * Math.sin((angle * Math.PI) / 180);
  let backspin = spin * RADIANS_A_SECOND_PER_RPM;
  let run = 0;
  for (let bounce = 0; bounce < 50 && down > 0.3; bounce += 1) {
    ({ forward, down, backspin } = bounced(forward, down, backspin));
    run += (forward * 2 * down) / GRAVITY;
  }
  return run + (Math.sign(forward) * forward ** 2) / (2 * (5 / 7) * ROLLING * GRAVITY);
}

/** One bounce; `down` is the speed into the turf before and, since the flight after is a parabola, again at its end. */
function bounced(forward: number, down: number, backspin: number) {
  const speed = Math.hypot(forward, down);
  const tip = 15.4 * (speed / 18.6) * (Math.atan2(Math.abs(forward), down) / (44.4 * (Math.PI / 180)));
  const tipped = Math.sign(forward) * Math.min(tip, 60) * (Math.PI / 180);
  const along = forward * Math.cos(tipped) - down * Math.sin(tipped);
  const into = forward * Math.sin(tipped) + down * Math.cos(tipped);
  const restitution = into > 20 ? 0.12 : 0.51 - 0.0375 * into + 0.000903 * into ** 2;
  const slip = along + BALL.radius * backspin;
  const grips = (2 / 7) * Math.abs(slip) <= 0.4 * (1 + restitution) * into;
  const lost = grips ? (2 / 7) * slip : Math.sign(slip) * 0.4 * (1 + restitution) * into;
  const alongAfter = along - lost;
  const out = restitution * into;
  return {
    forward: alongAfter * Math.cos(tipped) - out * Math.sin(tipped),
    down: Math.abs(alongAfter * Math.sin(tipped) + out * Math.cos(tipped)),
    backspin: backspin - (5 / 2) * (lost / BALL.radius),
  };
}

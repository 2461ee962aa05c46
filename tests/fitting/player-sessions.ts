import { type Session, sessionOf } from "../../src/fitting/session.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";

/** Carries and sides of three builds, invented. Each shot of a build lies `by` yards farther than the first build's. */
function sessionWith(by: readonly [number, number], facts: Parameters<typeof sessionOf>[1] = {}): Session {
  const names = ["100 g", "110 g", "120 g"];
  const carries = [150, 153.5, 151, 154, 149.5, 152];
  const sides = [-4, 3, 1.5, -2, 5, -3.5];
  const rows = carries.flatMap((carry, i) =>
    names.map((name, b) => `${name}\t${carry + [0, ...by][b]!}\t${sides[(i + b) % sides.length]}`),
  );
  const text = ["Build\tCarry (yd)\tOffline (yd)", ...rows].join("\n");
  return sessionOf(answer(readShots(text)), { baseline: "100 g", goal: "carry", ...facts });
}

/** One session of each verdict, all judged by carry. */
export const PLAYER_SESSIONS = {
  clear: sessionWith([9, 2]),
  leaning: sessionWith([2.2, 0.6], { leftHanded: true, units: "metric" }),
  "too close to call": sessionWith([0.6, 0.3]),
} as const;

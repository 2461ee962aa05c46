import { type Session, sessionOf } from "../../src/fitting/session.ts";
import type { AirFacts } from "../../src/fitting/session-air.ts";
import { sessionAir } from "../../src/fitting/session-air.ts";
import { SMITS_SMITH } from "../../src/flight/ball/smits-smith.ts";
import { flyBall } from "../../src/flight/trajectory/fly-ball.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";

/** How one build is hit: club speed mph, smash factor, and how often. */
export interface Swing {
  readonly build: string;
  readonly clubSpeed: number;
  readonly smash: number;
  readonly launch?: number;
}

const SHOTS = 8;

/**
 * A session of invented 7-iron shots whose truth is known: the flights are those of Smits and Smith (1994), which is not
 * the model that the project corrects with. Spin goes with ball speed, as at one spin loft.
 */
export function simulatedFlights(swings: readonly Swing[], air: AirFacts): Session {
  const header =
    "Build,Club Speed (mph),Ball Speed (mph),Launch Angle (deg),Spin Rate (rpm),Peak Height (ft),Landing Angle (deg),Carry (yd)";
  const lines = swings.flatMap(({ build, clubSpeed, smash, launch = 17 }) =>
    Array.from({ length: SHOTS }, (_, i) => {
      const club = clubSpeed + Math.sin(i * 5);
      const ball = club * (smash + 0.01 * Math.cos(i * 7));
      const up = launch + Math.cos(i * 2);
      const spin = 55 * ball + 200 * Math.sin(i * 3);
      const strike = { speed: ball * 0.44704, launch: up, spin };
      const flight = answer(flyBall(strike, answer(sessionAir(air)), { model: SMITS_SMITH }));
      const figures = [
        club,
        ball,
        up,
        spin,
        flight.height / 0.3048,
        flight.landingAngle,
        flight.carry / 0.9144,
      ];
      return `${build},${figures.map((figure) => figure.toFixed(6)).join(",")}`;
    }),
  );
  return sessionOf(answer(readShots([header, ...lines].join("\n"))), { title: "7-iron (invented)", air });
}

/** The session without a column. */
export function without(session: Session, ...keys: readonly string[]): Session {
  const values = new Map([...session.table.values].filter(([key]) => !keys.includes(key)));
  return { ...session, table: { ...session.table, values } };
}

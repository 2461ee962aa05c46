import { DEMO_FACTS, DEMO_TEXT } from "../../../src/fitting/demo.ts";
import { type Session, sessionOf } from "../../../src/fitting/session.ts";
import { readShots } from "../../../src/shots/read-shots.ts";
import { answer } from "../../club/answer.ts";

/** The demo session with so many shots: its own, again and again, each time a tenth further. */
export function demoOfSize(shots: number): Session {
  const [header, ...rows] = DEMO_TEXT.trim().split("\n");
  const lines = Array.from({ length: shots }, (_, shot) => {
    const round = Math.floor(shot / rows.length);
    return rows[shot % rows.length]!.replace(/\d+\.\d+/g, (figure) =>
      (Number(figure) + (round % 7) / 10).toFixed(1),
    );
  });
  return sessionOf(answer(readShots([header, ...lines].join("\n"))), DEMO_FACTS);
}

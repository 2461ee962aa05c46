import { DEMO_FACTS, DEMO_TEXT } from "../../src/fitting/demo.ts";
import { type Session, sessionOf } from "../../src/fitting/session.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";

/** The invented session that the project shows itself with. */
export function demoSession(): Session {
  return sessionOf(answer(readShots(DEMO_TEXT)), DEMO_FACTS);
}

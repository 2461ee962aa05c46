import { type Session, sessionOf } from "../../src/fitting/session.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";

/** Names that a formula, a search pattern or a quotation could take for something else. */
export const ODD_NAMES = ['=1+1 "stiff"', "95* ?~ o'clock", '=HYPERLINK("x")'] as const;

const [FIRST, SECOND, SINGLE] = ODD_NAMES.map((name) => `"${name.replaceAll('"', '""')}"`);

/**
 * A table with odd habits, invented: names that look like formulas and patterns, a build hit once, cells missing, shots
 * unticked, one figure that never varies, and a column of notes that spreadsheets would take for formulas.
 */
// biome-ignore format: a table reads best with a line a row
const ODD_TEXT = [
  "Keep\tBuild\tClub Speed (mph)\tBall Speed (mph)\tLaunch Angle (deg)\tSpin Rate (rpm)\tCarry (yd)\tOffline (yd)\tRemarks",
  `TRUE\t${FIRST}\t84.1\t113.2\t19.2\t6060\t161.6\t1.4\t+1+1`,
  `TRUE\t${SECOND}\t83.2\t\t18\t5570\t162.6\t3.9\t@x`,
  `TRUE\t${FIRST}\t84.1\t114.3\t\t6220\t160.8\t0\t-2+3`,
  `FALSE\t${FIRST}\t84.1\t103.4\t17.9\t5740\t143.9\t-14.2\t=HYPERLINK("x")`,
  `TRUE\t${SINGLE}\t82.8\t112\t18.7\t6520\t164.8\t-0.4\t`,
  `TRUE\t${SECOND}\t81.9\t110.6\t17\t\t154.8\t11.7\t`,
  `TRUE\t${FIRST}\t84.1\t115\t19.4\t6370\t\t0.1\t`,
  `TRUE\t${SECOND}\t82.4\t112.1\t17\t5790\t159.6\t-8.9\t`,
  `FALSE\t${SECOND}\t80.1\t98.8\t15.8\t5280\t117\t4.1\t`,
  `TRUE\t${FIRST}\t84.1\t112.8\t18.5\t5920\t160.5\t-4.7\t`,
].join("\n");

export function oddSession(): Session {
  return sessionOf(answer(readShots(ODD_TEXT)), {
    title: "=1+1 and -2+3",
    player: "@x (invented)",
    date: "+1+1",
    place: '=HYPERLINK("x")',
    baseline: ODD_NAMES[1],
  });
}

import { type Session, sessionOf } from "../../src/fitting/session.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";

/** Names that a page or a picture would run, were they markup; each calls `sly`, so that a check can listen for it. */
export const SCRIPTS = [
  '<img src=x onerror="sly()">',
  "</svg><script>sly()</script>",
  "javascript:sly()",
  '"><svg onload="sly()">',
  "]]></t><f>sly()</f>",
] as const;

/** Texts that a spreadsheet would calculate, were they typed into a cell. Source of the beginnings: OWASP, CSV Injection. */
export const FORMULAS = [
  "=1+1",
  "+1+1",
  "-1+1",
  "@SUM(1,1)",
  "\t=1+1",
  "\r=1+1",
  "\n=1+1",
  '=HYPERLINK("http://sly.invalid","x")',
  "=cmd|' /C calc'!A0",
] as const;

const NAMES = [...SCRIPTS, "=1+1", "+1+1", "-1+1", "@x(1,1)"];

/** A pasted table, three shots for each sly name, with sly remarks. */
export const SLY_TEXT = [
  [
    "Build",
    "Ball Speed (mph)",
    "Launch Angle (deg)",
    "Spin Rate (rpm)",
    "Carry (yd)",
    "Offline (yd)",
    "Remark",
  ],
  ...NAMES.flatMap((name, build) =>
    [0, 1, 2].map((shot) => [
      name,
      `${112 + build + shot / 10}`,
      `${18 + shot / 10}`,
      `${6000 + 40 * shot}`,
      `${150 + 2 * build + shot}`,
      `${shot - 1}`,
      NAMES[(build + shot) % NAMES.length]!,
    ]),
  ),
]
  .map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join("\t"))
  .join("\n");

/** The table as a session whose player, title and place are as sly. */
export function slySession(): Session {
  return sessionOf(answer(readShots(SLY_TEXT)), {
    title: SCRIPTS[1],
    player: SCRIPTS[0],
    place: SCRIPTS[2],
    date: SCRIPTS[3],
    baseline: SCRIPTS[0],
  });
}

export const SLY_NAMES: readonly string[] = NAMES;

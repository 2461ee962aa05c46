import { expect, test } from "vitest";
import { type Session, sessionOf } from "../../src/fitting/session.ts";
import { evenedCarries } from "../../src/pane/evened-carries.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";
import { sessionOfShots } from "../fitting/session-of-shots.ts";
import { demoSession } from "../sheets/demo-session.ts";

const speed = (mph: number) => `${mph.toFixed(1)} mph`;
const headings = (session: Session) => evenedCarries(session, speed).map(({ heading }) => heading);

test("stands beside the carry as hit the carry with the strike evened out", () => {
  // By hand: carry is 150 + 500 (smash - 1.30), and 4 more with B, which was struck better by 0.02. The mean strike is
  // 1.33, so that A gains 0.01 x 500 and B loses as much.
  const rows = ["Build\tCarry (yd)\tSmash factor"];
  for (const smash of [1.3, 1.32, 1.34]) rows.push(`A\t${(150 + 500 * (smash - 1.3)).toFixed(3)}\t${smash}`);
  for (const smash of [1.32, 1.34, 1.36]) rows.push(`B\t${(154 + 500 * (smash - 1.3)).toFixed(3)}\t${smash}`);
  const [hit, evened, ...more] = evenedCarries(sessionOf(readShots(rows.join("\n")) as ShotTable), speed);
  expect(more).toEqual([]);
  expect(hit!.carries).toEqual([expect.closeTo(160, 9), expect.closeTo(174, 9)]);
  expect(evened!.carries).toEqual([expect.closeTo(165, 6), expect.closeTo(169, 6)]);
  expect(evened!.meaning).toContain("smash factor");
});

test("tells carries in standard air only where the air was stated", () => {
  expect(headings(demoSession())).toEqual(["As hit", "Strike evened out"]);
  const all = ["As hit", "Strike evened out", "Standard air", "and one club speed"];
  expect(headings({ ...demoSession(), air: { altitude: 1600 } })).toEqual(all);
});

test("leaves carries hit in standard air as they are, and takes thin air's yards away", () => {
  const inAir = (altitude: number) =>
    evenedCarries({ ...demoSession(), air: { altitude } }, speed).map(({ carries }) => carries as number[]);
  // Standard air is the standard atmosphere's at 0 m (ICAO Doc 7488), but for the last digits of its viscosity.
  const [hit, , sea] = inAir(0);
  expect(sea).toEqual(hit!.map((carry) => expect.closeTo(carry, 4)));
  // A ball flies farther in thinner air: every build loses by the correction.
  const [, , high] = inAir(1600);
  for (const [place, carry] of high!.entries()) expect(carry).toBeLessThan(hit![place]! - 1);
});

test("is empty where a table has nothing to even out by", () => {
  expect(evenedCarries(sessionOfShots({ A: [150, 152], B: [160, 158] }), speed)).toEqual([]);
});

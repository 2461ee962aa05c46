import { expect, it } from "vitest";
import { compareBuilds } from "../../src/fitting/compare-builds.ts";
import { plainSentences } from "../../src/fitting/plain-sentences.ts";
import { sessionOf } from "../../src/fitting/session.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";
import { sessionOfShots } from "./session-of-shots.ts";

const said = (session: ReturnType<typeof sessionOfShots>) => plainSentences(session, compareBuilds(session));

it("one build alone is not said to lack a carry that its table has", () => {
  expect(said(sessionOfShots({ A: [150, 152] }))).toEqual([]);
});

it("a table without carry is said to lack it", () => {
  const table = answer(readShots("Build\tBall speed\nA\t120\nA\t121\nB\t122\nB\t123"));
  expect(said(sessionOf(table))).toEqual([expect.stringMatching(/no carry to compare: a carry column/)]);
});

it("a limit that rounds to nothing is told in words, and not as 0.0 yd", () => {
  expect(said(sessionOfShots({ A: [150, 153.109], B: [160, 162] }))[0]).toMatch(
    /most likely between next to nothing and 19 yd\.$/,
  );
  expect(said(sessionOfShots({ A: [150, 153.12], B: [160, 162] }))[0]).toMatch(
    /may be anything from none to 19 yd longer\.$/,
  );
});

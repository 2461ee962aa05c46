import { mean, sampleStandardDeviation } from "simple-statistics";
import { describe, expect, test } from "vitest";
import { decide } from "../../src/fitting/decide.ts";
import { ledgerRows } from "../../src/ledger/ledger-rows.ts";
import { sessionId } from "../../src/ledger/session-id.ts";
import { shotRows } from "../../src/ledger/shot-rows.ts";
import { stableHash } from "../../src/ledger/stable-hash.ts";
import { answer, demoRows, demoSession, demoShots, laterSession, rowsOfSession } from "./demo-rows.ts";

test.each([
  ["", "cbf29ce484222325"],
  ["a", "af63dc4c8601ec8c"],
  ["foobar", "85944171f73967e8"],
])("the name of %j is that of the published test vectors", (text, name) => {
  // Fowler, Noll, Vo and Eastlake, draft-eastlake-fnv, appendix C: FNV-1a, 64 bits.
  expect(stableHash(text)).toBe(name);
});

describe("a session in the ledger", () => {
  test("has one row a build with the figures of its kept shots", () => {
    const rows = demoRows();
    expect(rows.map(({ build }) => build)).toEqual([
      "95 g high-launch",
      "105 g mid-launch",
      "115 g mid-launch",
      "120 g low-launch",
    ]);
    const carries = [162.6, 164.8, 162.6, 164.5, 162.2, 159.5];
    expect(rows[1]).toMatchObject({
      shots: 6,
      kept: 6,
      carryN: 6,
      shaftWeight: 105,
      player: "Rowan Tilsley (invented)",
    });
    expect(rows[1]!.carryMean).toBeCloseTo(mean(carries), 10);
    expect(rows[1]!.carrySd).toBeCloseTo(sampleStandardDeviation(carries), 10);
  });

  test("has chances that come to one, and names one build as chosen", () => {
    const rows = demoRows();
    expect(rows.reduce((sum, { chance }) => sum + Number(chance), 0)).toBeCloseTo(1, 6);
    expect(rows.filter(({ chosen }) => chosen)).toHaveLength(1);
  });

  test("says nothing of orders and notes that nobody told it, and keeps the name that it was first kept by", () => {
    const [row] = demoRows();
    expect(Object.keys(row!)).not.toEqual(expect.arrayContaining(["ordered"]));
    expect(Object.keys(row!)).not.toEqual(expect.arrayContaining(["note"]));
    const session = demoSession();
    const told = ledgerRows(session, decide(session), {
      ordered: { [String(row!.build)]: null },
      session: "s1",
    });
    expect(told[0]).toMatchObject({ ordered: null, session: "s1", entry: "s1-1" });
    expect(shotRows(session, "s1")[23]).toMatchObject({ session: "s1", shotKey: "s1-24" });
  });

  test("names no build as chosen where the verdict is too close to call", () => {
    const session = demoSession();
    const decision = answer(decide(session));
    const rows = ledgerRows(session, { ...decision, verdict: "too close to call" });
    expect(rows.filter(({ chosen }) => chosen)).toEqual([]);
    expect(rows.map(({ verdict }) => verdict)).toEqual(rows.map(() => "too close to call"));
  });

  test("keeps its name when player, date, names of builds or ticks are put right, and changes it with a figure", () => {
    const session = demoSession();
    const name = sessionId(session);
    const table = {
      ...session.table,
      keep: session.table.keep.map(() => false),
      build: session.table.build.map(() => "x"),
    };
    expect(sessionId({ ...session, player: "Other", date: "2026-01-01", table })).toBe(name);
    expect(sessionId(laterSession())).not.toBe(name);
  });

  test("of few figures is told apart by player and date as well", () => {
    const text = "Build\tCarry (yd)\nA\t150\nB\t160";
    const [one, two] = ["Ann", "Ben"].map((player) => sessionId(demoSession({ player }, text)));
    expect(one).not.toBe(two);
  });

  test("puts each shot into the archive with its own key", () => {
    const shots = demoShots();
    expect(shots).toHaveLength(24);
    expect(new Set(shots.map(({ shotKey }) => shotKey)).size).toBe(24);
    expect(shots[0]).toMatchObject({
      build: "95 g high-launch",
      keep: true,
      carry: 161.6,
      offline: 1.4,
      spin: 6060,
    });
    expect(new Set(shots.map(({ session }) => session))).toEqual(
      new Set([rowsOfSession(demoSession())[0]!.session]),
    );
  });
});

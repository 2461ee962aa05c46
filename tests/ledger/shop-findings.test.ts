import { describe, expect, test } from "vitest";
import { bandsOf } from "../../src/ledger/bands.ts";
import type { Row } from "../../src/ledger/cell.ts";
import { shopFindings } from "../../src/ledger/shop-findings.ts";
import { weightAcrossPlayers } from "../../src/ledger/weight-across-players.ts";
import { atOnce } from "../../src/slices/at-once.ts";
import { ols } from "../../src/stats/index.ts";
import { answer } from "./demo-rows.ts";
import { simulatedLedger, TRUTH } from "./simulated-ledger.ts";

describe("what a shop's data say of shaft weight", () => {
  const rows = simulatedLedger(400, 5);

  test("is the truth they were drawn from, within the limits, though strong players play heavy shafts", () => {
    for (const metric of ["carry", "spin", "clubSpeed"] as const) {
      const found = answer(weightAcrossPlayers(rows, metric));
      expect(found.low, metric).toBeLessThan(TRUTH[metric]);
      expect(found.high, metric).toBeGreaterThan(TRUTH[metric]);
      expect(found.high, metric).toBeLessThan(0);
    }
    // A plain line through all rows says the opposite of the truth.
    const plain = answer(
      ols(
        rows.map(({ shaftWeight }) => Number(shaftWeight)),
        rows.map(({ carryMean }) => Number(carryMean)),
      ),
    );
    expect(plain.slope.value).toBeGreaterThan(0);
  });

  test("covers the truth about as often as its limits promise", () => {
    let covered = 0;
    for (let seed = 100; seed < 200; seed++) {
      const { low, high } = answer(weightAcrossPlayers(simulatedLedger(60, seed), "carry"));
      if (low <= TRUTH.carry && TRUTH.carry <= high) covered++;
    }
    // 95 in 100 would; by the binomial law fewer than 89 come about once in 200 such tests.
    expect(covered).toBeGreaterThanOrEqual(89);
  });

  test("is not said of fewer than five players who hit different weights", () => {
    expect(weightAcrossPlayers(simulatedLedger(3, 1), "carry")).toMatchObject({ kind: "unavailable" });
    expect(weightAcrossPlayers([], "carry")).toMatchObject({ kind: "unavailable" });
  });

  test("is by bands of what the player does with that club over all builds, not of what the build did", () => {
    // By hand: 74.6 * 6, 75.2 * 6 and 76.1 * 12 shots come to 75.5 a shot; the wedge is a band of its own.
    const mine = (clubSpeedMean: number, kept: number, more: Row = {}): Row => ({
      ...{ entry: `e${clubSpeedMean}`, player: "Ann", kind: "mid iron", clubSpeedMean, kept },
      ...more,
    });
    const rows = [
      mine(74.6, 6),
      mine(75.2, 6, { player: " ann" }),
      mine(76.1, 12),
      mine(60, 6, { kind: "wedge" }),
    ];
    const blank = { ...mine(0, 6), clubSpeedMean: null, entry: "blank" };
    const held = bandsOf([...rows, blank])
      .filter((band) => band.rows.length > 0)
      .map((band) => [band.name, band.rows.length]);
    expect(held).toEqual([
      ["club speed below 75 mph", 1],
      ["club speed 75 to 90 mph", 4],
    ]);
  });

  test("is by bands of tempo where a tempo is known", () => {
    const known = rows.map((row) => ({ ...row, tempo: 2 + (Number(String(row.player).slice(7)) % 4) / 2 }));
    const found = atOnce(shopFindings(known));
    expect(found.weight.map(({ band }) => band)).toEqual(
      expect.arrayContaining(["tempo below 2.5 to 1", "tempo 2.5 to 3.5 to 1", "tempo from 3.5 to 1"]),
    );
    expect(found.missing).not.toContain("Tempo is not in the ledger.");
    const [, low, middle, high] = bandsOf(known)
      .slice(3)
      .map((band) => band.rows.length);
    expect(low! + middle! + high!).toBe(known.length);
  });

  test("stands by bands of club speed, and says that tempo is not known", () => {
    const found = atOnce(shopFindings(rows));
    expect(found.weight.map(({ band }) => band)).toContain("club speed 75 to 90 mph");
    expect(found.missing).toContain("Tempo is not in the ledger.");
    expect(found.warnings.length).toBeGreaterThan(3);
  });
});

/** A session of builds by name, the chosen one with a star. */
function session(
  id: string,
  player: string,
  date: string,
  builds: readonly string[],
  verdict = "clear",
): Row[] {
  return builds.map((build, i) => ({
    entry: `${id}-${i}`,
    session: id,
    player,
    date,
    kind: "mid iron",
    build: build.replace("*", ""),
    chosen: build.endsWith("*"),
    verdict,
  }));
}

describe("how verdicts held", () => {
  test("counts a clear verdict once, at the first session that could tell", () => {
    const rows = [
      ...session("1", "Ann", "2026-01-01", ["a*", "b"]),
      ...session("2", "Ann", "2026-02-01", ["c*", "d"]),
      ...session("3", "ann ", "2026-03-01", ["A*", "c"], "leaning"),
      ...session("4", "Ann", "2026-04-01", ["a", "c*"], "leaning"),
      ...session("5", "Ben", "2026-01-01", ["a*", "b"]),
      ...session("6", "Ben", "2026-02-01", ["a", "b*"], "leaning"),
      ...session("7", "Cleo", "2026-01-01", ["a*", "b"]),
    ];
    // By hand: Ann's a held at 3; her c of 2 lost at 3; Ben's a lost at 6; Cleo never came back.
    expect(atOnce(shopFindings(rows)).held).toMatchObject({ lookedAt: 3, held: 1, unseen: 1 });
  });

  test("neither counts nor loses one at a session that was too close to call", () => {
    const rows = [
      ...session("1", "Ann", "2026-01-01", ["a*", "b"]),
      ...session("2", "Ann", "2026-02-01", ["a", "b*"], "too close to call"),
      ...session("3", "Ben", "2026-01-01", ["a*", "b"]),
      ...session("4", "Ben", "2026-02-01", ["a", "b*"], "too close to call"),
      ...session("5", "Ben", "2026-03-01", ["a*", "b"], "leaning"),
    ];
    expect(atOnce(shopFindings(rows)).held).toMatchObject({ lookedAt: 1, held: 1, unseen: 1 });
  });
});

describe("builds that are tried and never win", () => {
  test("are listed with the chance that a build as good as the others would have none", () => {
    const rows = [
      ...session("1", "Ann", "2026-01-01", ["a*", "b"]),
      ...session("2", "Ben", "2026-01-02", ["a*", "b", "c"]),
      ...session("3", "Cleo", "2026-01-03", ["c*", "B", "a", "d"]),
      ...session("4", "Dora", "2026-01-04", ["b", "c"], ""),
    ];
    const close = [1, 2, 3].flatMap((day) =>
      session(`c${day}`, "Eve", `2026-02-0${day}`, ["e", "f*"], "too close to call"),
    );
    expect(atOnce(shopFindings(close)).neverWon).toEqual([]);
    // By hand: b lost in sessions of 2, 3 and 4 builds: 1/2 * 2/3 * 3/4 = 1/4. The fourth chose none.
    expect(atOnce(shopFindings(rows)).neverWon).toEqual([
      { build: "b", sessions: 3, chance: expect.closeTo(0.25, 12) },
    ]);
  });
});

import { describe, expect, it } from "vitest";
import { sessionOf } from "../../src/fitting/session.ts";
import { type StrikeAdjusted, strikeAdjusted } from "../../src/fitting/strike-adjusted.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";
import { sessionOfShots } from "./session-of-shots.ts";

describe("strikeAdjusted(session)", () => {
  it("moves each mean along the common slope to the mean strike, as an analysis of covariance does by hand", () => {
    // Within each build carry is 100 + 50 (smash - 1.30) times ten, exactly; B was struck better by 0.02.
    const rows = ["Build\tCarry (yd)\tSmash factor"];
    for (const [build, extra, smashes] of [
      ["A", 0, [1.3, 1.32, 1.34]],
      ["B", 4, [1.32, 1.34, 1.36]],
    ] as const) {
      for (const smash of smashes)
        rows.push(`${build}\t${(150 + 500 * (smash - 1.3) + extra).toFixed(3)}\t${smash}`);
    }
    const found = strikeAdjusted(sessionOf(readShots(rows.join("\n")) as ShotTable)) as StrikeAdjusted[];
    expect(found.map(({ raw }) => raw)).toEqual([expect.closeTo(160, 9), expect.closeTo(174, 9)]);
    // The mean strike is 1.33: A gains 0.01 · 500, B loses as much; the 4 yd of the build remain.
    expect(found.map(({ adjusted }) => adjusted)).toEqual([expect.closeTo(165, 6), expect.closeTo(169, 6)]);
    expect(found[0]!.by).toBe("smash factor");
  });

  it("says what it needs", () => {
    expect(strikeAdjusted(sessionOfShots({ A: [1, 2], B: [3, 4] }))).toMatchObject({ kind: "unavailable" });
  });
});

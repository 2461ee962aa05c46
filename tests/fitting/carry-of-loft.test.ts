import { describe, expect, it } from "vitest";
import { carryOfLoft } from "../../src/fitting/carry-of-loft.ts";
import { DEMO_FACTS, DEMO_TEXT } from "../../src/fitting/demo.ts";
import { sessionOf } from "../../src/fitting/session.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";
import { sessionOfShots } from "./session-of-shots.ts";

const demo = sessionOf(readShots(DEMO_TEXT) as ShotTable, {
  ...DEMO_FACTS,
  builds: [{ name: "105 g mid-launch", loft: 33 }],
});

describe("carryOfLoft(session, build)", () => {
  const carry = carryOfLoft(demo, "105 g mid-launch");

  it("is the measured mean at the tested loft", () => {
    expect(carry(33)).toBeCloseTo(162.7, 9);
  });

  it("falls from loft to loft, by some yards for four degrees, as trade gaps go (common practice, no source)", () => {
    const gaps = [25, 29, 33, 37, 41]
      .map((loft) => carry(loft)!)
      .map((each, i, all) => (i === 0 ? 8 : all[i - 1]! - each));
    for (const gap of gaps) {
      expect(gap).toBeGreaterThan(3);
      expect(gap).toBeLessThan(18);
    }
  });

  it("says nothing beyond ten degrees, without a loft, or without a strike", () => {
    expect(carry(56)).toBeUndefined();
    expect(carry(undefined)).toBeUndefined();
    expect(carryOfLoft(sessionOfShots({ A: [150, 152], B: [151] }), "A")(30)).toBeUndefined();
  });
});

import { describe, expect, it } from "vitest";
import { deliveryDoubts } from "../../src/fitting/delivery-doubts.ts";
import { DEMO_FACTS, DEMO_TEXT } from "../../src/fitting/demo.ts";
import { sessionOf } from "../../src/fitting/session.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

const session = (text: string) => sessionOf(readShots(text) as ShotTable);

describe("deliveryDoubts(session)", () => {
  it("points out a launch outside attack angle to dynamic loft, by row", () => {
    const text = "Build\tAttack Angle\tDynamic Loft\tLaunch Angle\nA\t-4\t24\t18\nA\t-4\t24\t31";
    expect(deliveryDoubts(session(text))).toEqual([
      {
        index: 1,
        message: expect.stringMatching(/^Row 3: launch 31 lies outside attack -4 to dynamic loft 24 degrees/),
      },
    ]);
  });

  it("finds nothing in figures that fit, nor where there are too few columns", () => {
    expect(deliveryDoubts(sessionOf(readShots(DEMO_TEXT) as ShotTable, DEMO_FACTS))).toEqual([]);
    expect(deliveryDoubts(session("Build\tLaunch Angle\nA\t18\nA\t19"))).toEqual([]);
  });
});

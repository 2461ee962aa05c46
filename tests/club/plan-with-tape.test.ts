import { describe, expect, test } from "vitest";
import { assembleClub } from "../../src/club/assemble-club.ts";
import { planSet } from "../../src/club/plan-set.ts";
import type { SetRequest } from "../../src/club/set-request.ts";
import { swingweightPoints } from "../../src/club/swingweight-points.ts";
import { answer } from "./answer.ts";

const set = (head: number, most: number): SetRequest => ({
  clubs: [{ club: "7", length: 37, head }],
  target: { kind: "swingweight", code: "D2" },
  shafts: { kind: "steps", weight: 105 },
  grip: { weight: 50 },
  tape: { up: 1, most },
});
const needed = answer(planSet(set(200, 500))).clubs[0]!.headWeight;

describe("planSet(request) with lead tape", () => {
  test("finds the tape that brings a head on hand to the target", () => {
    const [club] = answer(planSet(set(needed - 4, 6))).clubs;
    // Tape an inch nearer the hands than the head: a little more than the four grams that the head lacks.
    expect(club!.tape).toBeGreaterThan(4);
    expect(club!.tape).toBeLessThan(4.4);
    const parts = {
      ...club!.parts,
      head: { ...club!.parts.head, weight: needed - 4 },
      tape: [{ weight: club!.tape!, place: 36 }],
    };
    // Moments add up: with the tape the club is D2, 32 points above A0.
    expect(swingweightPoints(answer(assembleClub(parts)).moment14)).toBeCloseTo(32, 9);
  });

  test("names the club whose target no tape can reach, and by how much", () => {
    expect(planSet(set(needed - 12, 6))).toMatchObject({
      message: expect.stringMatching(/^Club 7: Without tape the club has .*asks for 12\.\d g, more than 6 g/),
    });
  });

  test("asks for none where the head is heavy enough", () => {
    expect(answer(planSet(set(needed + 3, 6))).clubs[0]!.tape).toBeUndefined();
  });

  test("refuses a tape line without its most", () => {
    expect(planSet(set(250, Number.NaN))).toMatchObject({ message: expect.stringContaining("most tape") });
  });
});

import { describe, expect, test } from "vitest";
import type { ClubParts } from "../../src/club/club-parts.ts";
import { planClub } from "../../src/club/plan-club.ts";
import { answer, refusal } from "./answer.ts";

const bare: ClubParts = {
  length: 37,
  head: { weight: 0 },
  shaft: { weight: 110, length: 41 },
  trims: { tip: 1, cutLength: 36 },
  grip: { weight: 50 },
};
const target = { kind: "swingweight", code: "D2" } as const;
const seven = { club: "7", length: 37 };
const needed = answer(planClub(seven, bare, target)).headWeight;

describe("planClub(club, bare, target, bendLimit, tape)", () => {
  test("says of a head that is too heavy by how much, and of no other", () => {
    const warnings = (head: number) => answer(planClub({ ...seven, head }, bare, target)).warnings;
    expect(warnings(needed + 3)).toEqual([
      "The head is 3.0 g too heavy; take a lighter one, or another target.",
    ]);
    expect(warnings(needed)).toEqual([]);
    expect(warnings(needed - 3)).toEqual([]);
  });

  test("says nothing of a head too heavy by less than a scale shows, or than the shop lets pass", () => {
    const warnings = (over: number, heavier?: number) =>
      answer(planClub({ ...seven, head: needed + over }, bare, target, undefined, undefined, heavier))
        .warnings;
    expect(warnings(0.04)).toEqual([]);
    expect(warnings(0.06)).toHaveLength(1);
    expect(warnings(0.9, 1)).toEqual([]);
    expect(warnings(1.1, 1)).toHaveLength(1);
  });

  test("warns of a head such as none is made, for then a length or its unit is wrong", () => {
    // A 7-iron of 37 cm taken for its inches: common practice knows heads of 100 to 600 g, no source.
    const short = { ...bare, length: 37 / 2.54, trims: { cutLength: 37 / 2.54 } };
    expect(answer(planClub({ ...seven, length: 37 / 2.54 }, short, target)).warnings.join(" ")).toMatch(
      /It asks for a head of 1\d{4} g, such as none is made; look at length, its unit/,
    );
    expect(answer(planClub(seven, bare, target)).warnings).toEqual([]);
  });

  test("hands on the frequency that was entered, and refuses one that is none", () => {
    expect(answer(planClub({ ...seven, frequency: 300 }, bare, target)).frequency).toBe(300);
    expect(answer(planClub(seven, bare, target)).frequency).toBeUndefined();
    expect(refusal(planClub({ ...seven, frequency: 0 }, bare, target))).toBe(
      "frequency is 0; it should be cycles a minute, more than 0.",
    );
  });

  test("refuses a length that is none by its own name", () => {
    expect(refusal(planClub({ ...seven, length: -37 }, bare, target))).toBe(
      "length is -37 in; it should be inches, more than 0 in.",
    );
  });

  test("asks for tape only where the head on hand is light and the shop uses tape", () => {
    const tape = { up: 0, most: 6 };
    // By hand: tape at the club's very end, where the head sits too, weighs what the head lacks.
    expect(answer(planClub({ ...seven, head: needed - 3 }, bare, target, 2, tape)).tape).toBeCloseTo(3, 6);
    expect(answer(planClub({ ...seven, head: needed }, bare, target, 2, tape)).tape).toBeUndefined();
    expect(answer(planClub({ ...seven, head: needed + 3 }, bare, target, 2, tape)).tape).toBeUndefined();
    expect(answer(planClub({ ...seven, head: needed - 3 }, bare, target, 2)).tape).toBeUndefined();
    expect(refusal(planClub({ ...seven, head: needed - 9 }, bare, target, 2, tape))).toMatch(/6/);
  });

  test("warns of a bend beyond the maker's limit, not at it, and not where none is entered", () => {
    const bent = { ...seven, loft: 33, headLoft: 35, lie: 62, headLie: 64.5 };
    const warnings = (limit?: number) => answer(planClub(bent, bare, target, limit)).warnings;
    expect(warnings()).toEqual([]);
    expect(warnings(2.5)).toEqual([]);
    expect(warnings(2)).toEqual(["Bending lie by -2.5 degrees passes the maker's limit of 2."]);
    expect(warnings(1)).toHaveLength(2);
    expect(answer(planClub({ ...seven, loft: 33 }, bare, target, 1)).warnings).toEqual([]);
  });

  test("knows a bend only from both what is wanted and what the head has", () => {
    const change = (more: object) => answer(planClub({ ...seven, ...more }, bare, target));
    expect(change({ lie: 62, headLie: 64.5 }).lieChange).toBe(-2.5);
    expect(change({ lie: 62 }).lieChange).toBeUndefined();
    expect(change({ headLie: 64.5 }).lieChange).toBeUndefined();
    expect(change({ loft: 33, headLoft: 35 }).loftChange).toBe(-2);
    expect(change({ loft: 33 }).loftChange).toBeUndefined();
    expect(change({ headLoft: 35 }).loftChange).toBeUndefined();
    expect(change({}).toAdd).toBeUndefined();
  });

  test("bounce follows the bend, stays without one, and is not made up", () => {
    const bounce = (more: object) => answer(planClub({ ...seven, ...more }, bare, target)).bounce;
    // Delofting by bending takes as much off the bounce (common practice, no source).
    expect(bounce({ bounce: 6, loft: 33, headLoft: 35 })).toBe(4);
    expect(bounce({ bounce: 6 })).toBe(6);
    expect(bounce({ loft: 33, headLoft: 35 })).toBeUndefined();
  });

  test.each([
    [{ loft: 91 }, /^loft is 91/],
    [{ lie: -1 }, /^lie is -1/],
    [{ headLie: 91 }, /^head lie is 91/],
    [{ headLie: -1 }, /^head lie is -1/],
    [{ bounce: 46 }, /^bounce is 46/],
    [{ bounce: -31 }, /^bounce is -31/],
    [{ head: 0 }, /^head is 0/],
    [{ bore: -1 }, /^bore is -1/],
    [{ length: 1e10 }, /length/],
  ])("refuses a club with %j", (more, message) => {
    expect(refusal(planClub({ ...seven, ...more }, bare, target))).toMatch(message);
  });

  test("refuses a shaft that is too short for its cuts in the words of the cut", () => {
    const short = { ...bare, trims: { tip: 6, cutLength: 36 } };
    expect(refusal(planClub(seven, short, target))).toMatch(/too short for 6 in off the tip/);
  });
});

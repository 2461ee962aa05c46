import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assemble } from "../../src/club/assemble.ts";
import { assembleClub } from "../../src/club/assemble-club.ts";
import type { ClubParts } from "../../src/club/club-parts.ts";
import { headWeightFor } from "../../src/club/head-weight-for.ts";
import { simpleParts } from "../../src/club/simple-parts.ts";
import { swingweightMoment } from "../../src/club/swingweight-moment.ts";
import { type WeightSpot, weightFor } from "../../src/club/weight-for.ts";
import { answer, refusal } from "./answer.ts";
import { anyParts } from "./any-parts.ts";

describe("headWeightFor(code, length, shaft, shaftBalance, grip, tip, butt)", () => {
  test("gives a head whose club has the code", () => {
    const head = answer(headWeightFor("D2.5", 38, 110, 18.5, 50, 3, 4));
    expect(answer(assemble(38, head, 110, 18.5, 50, 3, 4)).moment14).toBeCloseTo(
      answer(swingweightMoment("D2.5")),
      10,
    );
  });

  test("agrees with the moment worked by hand", () => {
    // By hand: D2 is 217 in-oz (anchor from memory) = 6151.8465 g in; the shaft gives 110 * 5 = 550 g in, the grip
    // 50 * (13.5 / 2.54 - 14) = -434.252 g in; 6036.0985 g in over 24 in leaves 251.5041 g.
    expect(answer(headWeightFor("D2", 38, 110, 19, 50))).toBeCloseTo(251.5041, 4);
  });

  test("says so where not even a club without a head is light enough", () => {
    const message = refusal(headWeightFor("A0", 48, 400, 40, 0));
    expect(message).toContain("Without head the club has 366.85 in-oz");
    expect(message).toContain("less than none");
  });

  test.each([
    ["H2", 38, 110, 19, "no code"],
    ["D2", Number.NaN, 110, 19, "length"],
    ["D2", 38, -1, 19, "shaft"],
    ["D2", 38, 110, 39, "shaftBalance"],
  ])("refuses (%s, %s, %s, %s): %s", (code, length, shaft, balance, message) => {
    expect(refusal(headWeightFor(code, length, shaft, balance, 50))).toContain(message);
  });
});

describe("weightFor(parts, spot, target)", () => {
  const weightAt = (parts: ClubParts, spot: WeightSpot): number => {
    if (spot.kind === "head") return parts.head.weight;
    return (spot.kind === "tip weight" ? parts.tipWeight : parts.buttWeight)!.weight;
  };

  test("gives head, tip and butt weight back from the moment they made, to 1e-9", () => {
    fc.assert(
      fc.property(anyParts, fc.constantFrom("head", "tip weight", "butt weight"), (parts, kind) => {
        const { moment14 } = answer(assembleClub(parts));
        const weight = answer(weightFor(parts, { kind }, { kind: "moment", moment: moment14 }));
        expect(Math.abs(weight - weightAt(parts, { kind }))).toBeLessThan(1e-9);
      }),
    );
  });

  test("gives the head back from the inertia it made, to 1e-9", () => {
    fc.assert(
      fc.property(anyParts, (parts) => {
        const { inertiaButt } = answer(assembleClub(parts));
        const weight = answer(weightFor(parts, { kind: "head" }, { kind: "inertia", inertia: inertiaButt }));
        expect(Math.abs(weight - parts.head.weight)).toBeLessThan(1e-9);
      }),
    );
  });

  const parts = answer(simpleParts(37, 268, 110, 18.5, 50));

  test("finds tape on top of what the club has", () => {
    const { moment14 } = answer(assembleClub(parts));
    // By hand: 3 g at 36 in give 3 * 22 / 28.349523125 in-oz.
    const moment = moment14 + (3 * 22) / 28.349523125;
    const taped = { ...parts, tape: [{ weight: 1, place: 36 }] };
    expect(answer(weightFor(parts, { kind: "tape", place: 36 }, { kind: "moment", moment }))).toBeCloseTo(
      3,
      9,
    );
    expect(answer(weightFor(taped, { kind: "tape", place: 36 }, { kind: "moment", moment }))).toBeCloseTo(
      2,
      9,
    );
  });

  test.each<[string, WeightSpot, Parameters<typeof weightFor>[2], number | undefined, string]>([
    [
      "a target no tape can reach",
      { kind: "tape", place: 36 },
      { kind: "swingweight", code: "B0" },
      undefined,
      "less than none",
    ],
    [
      "tape at the fulcrum",
      { kind: "tape", place: 14 },
      { kind: "swingweight", code: "D9" },
      undefined,
      "changes nothing",
    ],
    [
      "tape off the club",
      { kind: "tape", place: 40 },
      { kind: "swingweight", code: "D9" },
      undefined,
      "tape place",
    ],
    [
      "more than the place holds",
      { kind: "tip weight" },
      { kind: "swingweight", code: "G0" },
      9,
      "more than 9 g",
    ],
    [
      "a butt weight for inertia",
      { kind: "butt weight" },
      { kind: "inertia", inertia: 3000 },
      undefined,
      "changes nothing",
    ],
    ["an inertia that is none", { kind: "head" }, { kind: "inertia", inertia: 0 }, undefined, "inertia is 0"],
    ["a moment that is none", { kind: "head" }, { kind: "moment", moment: Number.NaN }, undefined, "moment"],
  ])("refuses %s", (_, spot, target, most, message) => {
    expect(refusal(weightFor(parts, spot, target, most))).toContain(message);
  });
});

describe("weightFor(parts, spot, target) says what is wrong", () => {
  const club = answer(simpleParts(37, 270, 110, 18.5, 50));

  test("by how many grams a part is too heavy, without a sign", () => {
    const message = refusal(weightFor(club, { kind: "tip weight" }, { kind: "swingweight", code: "A0" }));
    expect(message).toMatch(/ asks for \d+\.\d g less than none/);
    expect(message).toContain("161.00 in-oz");
  });

  test("in the unit of the target", () => {
    const message = refusal(weightFor(club, { kind: "tip weight" }, { kind: "inertia", inertia: 100 }));
    expect(message).toContain("100 kg cm2 asks for");
  });

  test("tape lies on the club: from its butt to its end, and not beside it", () => {
    const tape = (place: number) => weightFor(club, { kind: "tape", place }, { kind: "moment", moment: 225 });
    for (const place of [-1, 37.5, Number.NaN]) expect(refusal(tape(place))).toContain("tape place is");
    expect(tape(37)).toBeTypeOf("number");
    // At the butt weight takes swingweight off, so it leads up to no higher target.
    expect(refusal(tape(0))).not.toContain("tape place is");
    // 14 inches from the butt is the fulcrum.
    expect(refusal(tape(14))).toContain("changes nothing");
  });
});

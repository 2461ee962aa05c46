import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assembleClub } from "../../src/club/assemble-club.ts";
import type { ClubParts } from "../../src/club/club-parts.ts";
import { withLength } from "../../src/club/with-length.ts";
import { answer, refusal } from "./answer.ts";
import { anyParts } from "./any-parts.ts";

const parts: ClubParts = {
  length: 37,
  head: { weight: 268, place: 36.5 },
  shaft: { weight: 110, length: 41, balance: 20 },
  trims: { tip: 1, cutLength: 35.5 },
  grip: { weight: 50, length: 10.5, balance: 5 },
  ferrule: { weight: 2, place: 34 },
  epoxy: { weight: 3, place: 35 },
  tipWeight: { weight: 5, place: 35.25 },
  buttWeight: { weight: 8, place: 0.5 },
  tape: [{ weight: 4, place: 36 }],
  extension: { weight: 6, length: 1, insert: 2 },
};

describe("assembleClub(parts, gripPoint)", () => {
  test("places every part along the axis", () => {
    const club = answer(assembleClub(parts));
    const places = Object.fromEntries(club.shares.map((share) => [share.part, share.place]));
    // By hand: given places; an extension of 1 + 2 in is a uniform rod that balances at 1.5.
    expect(places).toMatchObject({
      head: 36.5,
      grip: expect.closeTo(5, 9),
      ferrule: 34,
      epoxy: 35,
      "tip weight": 35.25,
      "butt weight": 0.5,
      tape: 36,
      extension: 1.5,
    });
    // The cut shaft runs from 1 in (the extension) to 36.5 in and balances within its middle third.
    expect(places.shaft).toBeGreaterThan(1 + 35.5 / 3);
    expect(places.shaft).toBeLessThan(1 + (2 * 35.5) / 3);
  });

  test("puts parts without a place where they usually sit", () => {
    const usual = { ...parts, head: { weight: 268 }, ferrule: { weight: 2 }, epoxy: { weight: 3 } };
    const club = answer(assembleClub({ ...usual, tipWeight: { weight: 5 }, buttWeight: { weight: 8 } }));
    const places = Object.fromEntries(club.shares.map((share) => [share.part, share.place]));
    expect(places).toMatchObject({ head: 37, ferrule: 35, epoxy: 36, "tip weight": 36.5, "butt weight": 0 });
  });

  test.each([
    [{ ...parts, trims: { tip: 1, cutLength: 37 } }, "the shaft ends 38 in"],
    [{ ...parts, length: 0 }, /^length is 0/],
    [{ ...parts, head: { weight: -3 } }, "head weight"],
    [{ ...parts, head: { weight: 268, place: 0 } }, "head place is 0"],
    [{ ...parts, grip: { weight: -1 } }, "grip weight is -1"],
    [{ ...parts, grip: { weight: 50, length: 0 } }, "grip length is 0"],
    [{ ...parts, grip: { weight: 50, length: 10, balance: 0 } }, "grip balance point is 0"],
    [{ ...parts, grip: { weight: 50, length: 10, balance: 10 } }, "grip balance point is 10"],
    [{ ...parts, extension: { weight: -1, length: 1 } }, "extension weight is -1"],
    [{ ...parts, extension: { weight: 1, length: 1, insert: -1 } }, "extension insert is -1"],
    [{ ...parts, grip: { weight: 50, length: 40 } }, "grip length"],
    [{ ...parts, grip: { weight: 50, length: 10, balance: 11 } }, "grip balance point"],
    [{ ...parts, tape: [{ weight: 1, place: Number.NaN }] }, "tape 1 place"],
    [{ ...parts, epoxy: { weight: -1 } }, "epoxy"],
    [{ ...parts, extension: { weight: 1, length: 0 } }, "extension length"],
    [{ ...parts, shaft: { weight: 110, length: 30 } }, "too short"],
  ])("refuses parts that make no club (case %#): %s", (wrong, message) => {
    expect(refusal(assembleClub(wrong))).toMatch(message);
  });

  test("refuses a grip point that is no figure", () => {
    expect(refusal(assembleClub(parts, Number.NaN))).toContain("grip point");
  });

  test("grows where physics grows: head, tip, length; a butt weight takes swingweight off", () => {
    fc.assert(
      fc.property(anyParts, fc.double({ min: 0.1, max: 10, noNaN: true }), (club, more) => {
        const plain = answer(assembleClub(club));
        const head = answer(
          assembleClub({ ...club, head: { ...club.head, weight: club.head.weight + more } }),
        );
        const tip = answer(assembleClub({ ...club, tipWeight: { weight: club.tipWeight!.weight + more } }));
        const butt = answer(
          assembleClub({ ...club, buttWeight: { weight: club.buttWeight!.weight + more } }),
        );
        const shorter = answer(assembleClub(withLength(club, club.length - more / 4)));
        for (const heavier of [head, tip]) {
          expect(heavier.moment14).toBeGreaterThan(plain.moment14);
          expect(heavier.inertiaButt).toBeGreaterThan(plain.inertiaButt);
        }
        expect(butt.moment14).toBeLessThan(plain.moment14);
        expect(butt.inertiaButt).toBeCloseTo(plain.inertiaButt, 9);
        expect(shorter.moment14).toBeLessThan(plain.moment14);
        expect(shorter.inertiaButt).toBeLessThan(plain.inertiaButt);
        expect(plain.inertiaGrip).toBeLessThan(plain.inertiaButt);
      }),
    );
  });
});

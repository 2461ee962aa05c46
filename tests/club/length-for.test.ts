import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assembleClub } from "../../src/club/assemble-club.ts";
import { lengthFor } from "../../src/club/length-for.ts";
import { simpleParts } from "../../src/club/simple-parts.ts";
import { answer, refusal } from "./answer.ts";
import { anyParts } from "./any-parts.ts";

describe("lengthFor(parts, target)", () => {
  test("gives the length back from the swingweight or the inertia it made", () => {
    fc.assert(
      fc.property(anyParts, (parts) => {
        const { moment14, inertiaButt } = answer(assembleClub(parts));
        expect(answer(lengthFor(parts, { kind: "moment", moment: moment14 }))).toBeCloseTo(parts.length, 9);
        expect(answer(lengthFor(parts, { kind: "inertia", inertia: inertiaButt }))).toBeCloseTo(
          parts.length,
          9,
        );
      }),
      { numRuns: 25 },
    );
  });

  test("leaves some shaft below a long extension", () => {
    const parts = {
      length: 37,
      head: { weight: 268 },
      shaft: { weight: 50, length: 17 },
      grip: { weight: 50 },
      extension: { weight: 60, length: 20 },
    };
    expect(refusal(lengthFor(parts, { kind: "swingweight", code: "G9" }))).toMatch(
      /clubs of 24\.00 to 37\.00/,
    );
  });

  test("says what the raw shaft allows where no length will do", () => {
    const parts = answer(simpleParts(37, 268, 110, 18.5, 50));
    expect(refusal(lengthFor(parts, { kind: "swingweight", code: "G5" }))).toMatch(
      /clubs of 14\.63 to 37\.00 inches/,
    );
    expect(refusal(lengthFor(parts, { kind: "swingweight", code: "Z" }))).toContain("no code");
  });
});

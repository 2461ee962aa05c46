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

  // By hand: 41 in less 1 in at the tip reach 4 in farther than the 36 in of now; a saw at the butt of a club of 37 in
  // stops 4 in short of a grip of 10.5 in, unless something fixed beyond the grip stands in its way.
  test.each([
    [{ tip: 1, cutLength: 36 }, [], "14.50 to 41.00"],
    [{ tip: 1, butt: 4 }, [], "14.50 to 41.00"],
    [{ tip: 1, butt: 4 }, [{ weight: 2, place: 5 }], "14.50 to 41.00"],
    [{ tip: 1, butt: 4 }, [{ weight: 2, place: 20.5 }], "27.00 to 41.00"],
  ])("a shaft cut by %j with tape %j makes clubs of %s inches", (trims, tape, range) => {
    const parts = {
      length: 37,
      head: { weight: 268 },
      shaft: { weight: 110, length: 41 },
      trims,
      grip: { weight: 50, length: 10.5 },
      tape,
    };
    expect(refusal(lengthFor(parts, { kind: "inertia", inertia: 90_000 }))).toContain(`clubs of ${range}`);
    expect(refusal(lengthFor(parts, { kind: "inertia", inertia: 1 }))).toContain(`clubs of ${range}`);
  });

  test("refuses parts that make no club, whatever the length", () => {
    const parts = answer(simpleParts(37, 268, 110, 18.5, 50));
    const target = { kind: "inertia", inertia: 2700 } as const;
    expect(refusal(lengthFor({ ...parts, head: { weight: -1 } }, target))).toMatch(/^head weight is -1/);
  });

  test("says what the raw shaft allows where no length will do", () => {
    const parts = answer(simpleParts(37, 268, 110, 18.5, 50));
    expect(refusal(lengthFor(parts, { kind: "swingweight", code: "G5" }))).toMatch(
      /clubs of 14\.63 to 37\.00 in,/,
    );
    expect(refusal(lengthFor(parts, { kind: "swingweight", code: "Z" }))).toContain("no code");
  });
});

import { describe, expect, test } from "vitest";
import { readSetFile } from "../../src/club/read-set.ts";
import { setFileText } from "../../src/club/set-file-text.ts";
import type { SetRequest } from "../../src/club/set-request.ts";
import { setRequestFor } from "../../src/fitting/set-request.ts";
import { answer } from "./answer.ts";

/** A request without what is not said, for a step of nought and a step left out mean the same. */
const plain = (request: SetRequest) =>
  JSON.parse(JSON.stringify(request, (key, value) => (key === "step" && value === 0 ? undefined : value)));

const USUAL = answer(setRequestFor({ name: "105 g mid-launch", weight: 105 }));

/** Every line that a set file knows. */
const FULL = `set; Harrow Lane irons
target; swingweight; D2; 0.5; 7
shafts; 108; 3; 7
grip; 50; 10.63; 5.3
ferrule; 2
epoxy; 2.5
tip; parallel
tip trims; 0.5; 0.5; 7
balance share; 0.49
most tip trim; 3
most butt trim; 2
least cut length; 35
bend limit; 2
tape; 1; 6
tolerance; length; 0.0625
tolerance; swingweight; 0.5
tolerance; frequency; 3
bin; 107.2; 108.9; 110.4
club; length; loft; lie; swingweight; head; head loft; head lie; bounce; shaft; raw length; tip trim; bore; frequency; carry; putter
7; 37; 33; 62; D3; 268; 33.5; 61.5; 6; 105; 41; 1; 0.25; 300; 160; no
8; 36.5; 37; 62.5; ; 275; ; ; ; ; 41; 1.5; ; ; ; no`;

describe("a set request as a set file", () => {
  test("keeps which club is a putter, one among others too", () => {
    const [first, ...rest] = USUAL.clubs;
    const request = { ...USUAL, clubs: [{ ...first!, putter: true }, ...rest] };
    expect(plain(answer(readSetFile(setFileText(request))))).toEqual(plain(request));
  });

  test("reads back as the same request", () => {
    expect(plain(answer(readSetFile(setFileText(USUAL))))).toEqual(plain(USUAL));
  });

  test("keeps every line and every column that a set file knows", () => {
    const full = answer(readSetFile(FULL));
    expect(plain(answer(readSetFile(setFileText(full))))).toEqual(plain(full));
    for (const line of FULL.split("\n").slice(0, 18)) expect(setFileText(full).split("\n")).toContain(line);
  });

  test("keeps the other targets, listed shafts and a name with a semicolon in it", () => {
    for (const target of [
      { kind: "inertia", inertia: 2750 },
      { kind: "inertia of", reference: "7i", code: "D2" },
    ] as const) {
      const request: SetRequest = {
        ...USUAL,
        target,
        name: 'Long; and "short"',
        shafts: { kind: "list", weights: USUAL.clubs.map((_, i) => 100 + i) },
      };
      expect(plain(answer(readSetFile(setFileText(request))))).toEqual(plain(request));
      expect(plain(answer(readSetFile(setFileText(request, "in", ","))))).toEqual(plain(request));
    }
  });

  test("keeps a reference without a step, and ends its lines with what was said", () => {
    const reference = USUAL.clubs[1]!.club;
    const request: SetRequest = {
      ...USUAL,
      target: { kind: "swingweight", code: "D2", reference },
      shafts: { kind: "steps", weight: 108, step: 3 },
      tipTrims: { tip: 0.5 },
      grip: { weight: 50 },
    };
    const lines = setFileText(request).split("\n");
    for (const line of [
      `target; swingweight; D2; 0; ${reference}`,
      "shafts; 108; 3",
      "tip trims; 0.5",
      "grip; 50",
    ]) {
      expect(lines).toContain(line);
    }
    expect(plain(answer(readSetFile(setFileText(request))))).toEqual(plain(request));
  });

  test("shows where a head's weight and a raw shaft's length would be typed", () => {
    expect(setFileText(USUAL)).toMatch(/^club; length; loft; lie; head; raw length; bore$/m);
  });
});

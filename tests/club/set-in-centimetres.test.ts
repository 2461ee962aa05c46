import { expect, test } from "vitest";
import { readSetFile } from "../../src/club/read-set.ts";
import { setFileText } from "../../src/club/set-file-text.ts";
import { SET_TEXT } from "../sheets/bench-set.ts";
import { answer, refusal } from "./answer.ts";

/** An inch is 2.54 cm exactly: international yard and pound agreement of 1959; NIST SP 811 (2008), appendix B.6. */
const CM = 2.54;

test("a set file in centimetres is read as the same set in inches, to a twentieth of a millimetre", () => {
  const set = answer(readSetFile(SET_TEXT));
  const text = setFileText(set, "cm");
  expect(text).toMatch(/^lengths; cm\n/);
  // By hand: 38 in is 96.52 cm, 41 in 104.14 cm; the grip's 10.63 in 27 cm, its balance point's 5.3 in 13.46 cm.
  expect(text).toContain("5; 96.52; 26; 61; 245");
  expect(text).toContain("grip; 50; 27; 13.46");
  const again = answer(readSetFile(text));
  const half = 0.005 / CM;
  set.clubs.forEach((club, i) => {
    for (const key of ["length", "rawLength", "bore"] as const)
      expect(Math.abs(again.clubs[i]![key]! - club[key]!), key).toBeLessThanOrEqual(half + 1e-12);
    expect({ ...again.clubs[i], length: 0, rawLength: 0, bore: 0 }).toEqual({
      ...club,
      ...{ length: 0, rawLength: 0, bore: 0 },
    });
  });
  expect(again.tipTrims).toMatchObject({ reference: "6" });
  expect(again.tipTrims!.tip).toBeCloseTo(0.5, 12);
  expect(again.shaftBlank!.limits!.tip).toBeCloseTo(1.5, 12);
  expect(again.shaftBlank!.balanceShare).toBe(0.49);
  expect(again.tolerances!.length! * CM).toBeCloseTo(0.32, 12);
  expect(again).toMatchObject({ shafts: set.shafts, target: set.target, bin: set.bin, bendLimit: 2 });
});

test("a set file says what its lengths are in, or they are inches; anything else is refused with the line", () => {
  expect(answer(readSetFile(`lengths; in\n${SET_TEXT}`))).toEqual(answer(readSetFile(SET_TEXT)));
  expect(refusal(readSetFile(`lengths; feet\n${SET_TEXT}`))).toBe(
    'Line 1: lengths is "feet"; it should be in (inches) or cm.',
  );
  expect(answer(readSetFile(`lengths; inches\n${SET_TEXT}`))).toEqual(answer(readSetFile(SET_TEXT)));
});

import { expect, test } from "vitest";
import { sessionOf } from "../../src/fitting/session.ts";
import { groupWords, limitsWords, shown } from "../../src/sheets/chart-words.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import { answer } from "../club/answer.ts";
import { sessionOfShots } from "../fitting/session-of-shots.ts";
import { smallParts, smallSession, withFigures } from "./small-session.ts";

// By hand: A carries 150, 152, 154, mean 152, s = 2; limits 152 -+ t(2, 0.975) 2 / sqrt 3 with t = 4.303 (any t
// table), so 147.0 and 157.0. Offline of A: (1 + 2 + 6) / 3 = 3. B lies on line.
const text = [
  "Build\tCarry (yd)\tOffline (yd)",
  ...["A\t150\t1", "A\t152\t2", "A\t154\t6", "B\t170\t-1", "B\t171\t0", "B\t172\t1"],
].join("\n");

function alts(facts: Parameters<typeof sessionOf>[1]): string[] {
  const session = sessionOf(answer(readShots(text)), facts);
  const [comparison] = comparisonWorkbook(session, NOTHING_TAKEN, "2026-11-25 10:00 UTC").sheets;
  return comparison!.charts.map(({ alt }) => alt);
}

test("the words for a chart that is not seen give each build's figures", () => {
  const told = alts({}).join("\n");
  expect(told).toContain("A: 3 shots, carry 152.0 yd, 3.0 yd right of the target.");
  expect(told).toContain("B: 3 shots, carry 171.0 yd, on line.");
  expect(told).toContain("A: 152.0 yd, between 147.0 yd and 157.0 yd.");
});

test("they are in the units of the session and written as its place writes figures", () => {
  // 152 yd x 0.9144 m = 138.99 m (international yard and pound agreement, 1959).
  expect(alts({ units: "metric", decimalMark: "," }).join("\n")).toContain("carry 139,0 m, 2,7 m right");
});

test("a chance that is all but certain is told as the verdict tells it", () => {
  // Each of B's carries is above all of A's by far more than they spread.
  const chances = alts({ goal: "carry" }).find((alt) => alt.startsWith("Bars"));
  expect(chances).toBe("Bars: A 1 in 100, B 99 or more in 100.");
});

test("a build of one shot is told so, and one of which a figure is missing is passed over", () => {
  const shots = {
    A: [[150, -3.04]],
    B: [160, 162],
    C: [
      [140, 0.04],
      [142, -0.04],
    ],
  } as const;
  const { session, comparison } = smallParts(sessionOfShots(shots));
  const said = groupWords(session, comparison);
  expect(said).toContain("A: 1 shot, carry 150.0 yd, 3.0 yd left of the target.");
  expect(said).not.toContain("B:");
  expect(said).toMatch(/C: 2 shots, carry 141\.0 yd, on line\.$/);
  expect(limitsWords(session, comparison, "carry")).toMatch(
    /A: 150\.0 yd, one shot only\. B: 161\.0 yd, between \d+\.\d yd and \d+\.\d yd\. C: /,
  );
});

test("a build without carries is passed over, and a figure without a unit has none", () => {
  const never = [150, Number.NaN, 152, Number.NaN, 154, Number.NaN, 100, 140];
  const { session, comparison } = smallParts(withFigures(smallSession(), "carry", never));
  expect(groupWords(session, comparison)).not.toContain("B:");
  expect([shown(session, "smash", 1.3), shown(session, "carry", 150)]).toEqual(["1.30", "150.0 yd"]);
});

test("nothing is told where no build has the figure", () => {
  const { session, comparison } = smallParts(sessionOfShots({ A: [150, 151] }));
  expect([groupWords(session, comparison), limitsWords(session, comparison, "spin")]).toEqual(["", ""]);
});

import { describe, expect, it } from "vitest";
import { evidenceFormula } from "../../src/sheets/evidence.ts";
import { without } from "../fitting/simulated-flights.ts";
import { smallParts, smallSession } from "./small-session.ts";

const WINDOWS = { cells: "$C$30:$D$31", sum: 35 };

function evidence(session = smallSession(), windows: typeof WINDOWS | null = WINDOWS) {
  const { comparison, shots, layout } = smallParts(session);
  return evidenceFormula(session, comparison, shots, layout, "today", windows);
}

describe("evidenceFormula(session, comparison, shots, workings, made, windows)", () => {
  // By hand, row by row of the Workings sheet: place x (count + mean + SD).
  const weighted =
    1 * (3 + 20 + 2) +
    2 * (3 + 152 + 2) +
    3 * (3 + 0 + 3) +
    4 * (2 + 15 + Math.SQRT2) +
    5 * (3 + 163 + 3) +
    6 * (3 + 5 + Math.sqrt(13)) +
    7 * (1 + 15) +
    8 * (1 + 140) +
    9 * (1 + 1);
  // By hand: carry times offline of the kept shots.
  const products = -3 * 150 + 0 * 152 + 3 * 154 + 2 * 160 + 4 * 163 + 9 * 166 + 1 * 140;
  const expected = (formula: string) => Number(/-\(([\d.]+)\)\)<=/.exec(formula)![1]);

  it("adds up counts, means and spreads by their rows, products of carry and offline, and the windows", () => {
    const { formula, value } = evidence();
    const column = (letter: string) =>
      `SUMPRODUCT(ROW('Workings'!$${letter}$3:$${letter}$11)-2,'Workings'!$${letter}$3:$${letter}$11)`;
    expect(formula).toContain(
      `ABS(${["C", "D", "E"].map(column).join("+")}+SUMPRODUCT(--('Shots'!$A$5:$A$12=TRUE),'Shots'!$D$5:$D$12,'Shots'!$E$5:$E$12)+SUM($C$30:$D$31)-(`,
    );
    expect(expected(formula)).toBeCloseTo(weighted + products + 35, 6);
    expect(formula).toMatch(/<=0\.00000000001\*\(1\+ABS\(/);
    expect(value).toMatch(/today.*not changed since/);
    expect(formula).toMatch(/,FALSE\),".*not changed since\.",".*today.*CHANGED SINCE.*"\)$/);
  });

  it("leaves out products and windows where there are none", () => {
    const { formula } = evidence(smallSession(), null);
    expect(formula).not.toContain("SUM($C$30");
    expect(expected(formula)).toBeCloseTo(weighted + products, 6);
    for (const key of ["offline", "carry"]) {
      const lacking = evidence(without(smallSession(), key), null).formula;
      expect(lacking).not.toContain("SUMPRODUCT(--");
    }
    // By hand: without launch and offline, the rows are A, B and C of carry.
    expect(expected(evidence(without(smallSession(), "launch", "offline"), null).formula)).toBeCloseTo(
      1 * (3 + 152 + 2) + 2 * (3 + 163 + 3) + 3 * (1 + 140),
      6,
    );
  });
});

import { expect, it } from "vitest";
import { pointsFormula } from "../../src/sheets/swingweight-formula.ts";

it("pointsFormula(cell) looks digits up one by one, two behind the mark, and refuses what is too short", () => {
  const code = 'SUBSTITUTE(UPPER(TRIM($K$5))," ","")';
  const digit = (place: number) => `(FIND(MID(${code},${place},1),"0123456789")-1)`;
  expect(pointsFormula("$K$5")).toBe(
    `IF(LEN(${code})<2,NA(),(FIND(LEFT(${code},1),"ABCDEFG")-1)*10+${digit(2)}+0*FIND(MID(${code}&".",3,1),".,")` +
      `+IF(LEN(${code})>3,${digit(4)}/10,0)+IF(LEN(${code})>4,${digit(5)}/100,0))`,
  );
});

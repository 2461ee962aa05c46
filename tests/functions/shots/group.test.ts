import { describe, expect, it } from "vitest";
import { callFunction } from "../../../src/functions/define-function.ts";
import { GROUP } from "../../../src/functions/shots/group.ts";
import { refusal } from "../../club/answer.ts";

const column = (...cells: unknown[]) => cells.map((cell) => [cell]);
const group = (...raw: unknown[]) => callFunction(GROUP, raw) as unknown[][];

describe("CLUB.GROUP(carry, offline, [keep])", () => {
  it("counts a straight shot, and leaves out a shot of which carry or offline is blank", () => {
    const carry = column(246, 254, 250, 0, null, 251);
    const offline = column(-3, 3, 0, 5, 6, null);
    const [row] = group(carry, offline);
    // By hand: three shots at 246, 254 and 250 by -3, 3 and 0.
    expect(row!.slice(0, 5)).toEqual([3, 250, 0, 4, 3]);
    expect(row).toEqual(group(column(246, 254, 250), column(-3, 3, 0))[0]);
  });

  it("lies along the line that the shots make, an angle to the right for long shots that go right", () => {
    // By hand: on the line offline = carry - 250 the group has no width and points 45 degrees to the right.
    const [row] = group(column(245, 250, 255), column(-5, 0, 5));
    const [, , , , , , , long, short, angle, area] = row as number[];
    expect(long).toBeCloseTo(Math.sqrt(50 * 5.991464547107979), 9);
    expect(short).toBeCloseTo(0, 9);
    expect(angle).toBeCloseTo(45, 9);
    expect(area).toBeCloseTo(0, 6);
  });

  it("counts only what is ticked", () => {
    const [carry, offline] = [column(246, 300, 254), column(-3, 40, 3)];
    expect(group(carry, offline, column(true, false, true))[0]!.slice(0, 3)).toEqual([2, 250, 0]);
  });

  it("leaves empty what too few shots cannot give", () => {
    expect(group(column(250), column(1))).toEqual([[1, 250, 1, "", "", "", "", "", "", "", ""]]);
    expect(group(column(246, 254), column(-3, 3))[0]!.slice(3)).toEqual([
      Math.sqrt(32),
      Math.sqrt(18),
      5,
      5,
      ...["", "", "", ""],
    ]);
  });

  it("puts its headings above where asked", () => {
    const rows = group(column(246, 254), column(-3, 3), null, true);
    expect(rows[0]).toHaveLength(11);
    expect(rows[1]![0]).toBe(2);
  });

  it("says which list is too short, and when no shot is whole", () => {
    expect(refusal(group(column(1, 2), column(1))[0]![0])).toBe(
      "offline has 1 cells and carry has 2; they should be of equal length.",
    );
    expect(refusal(group(column(1, 2), column(1, 2), column(true))[0]![0])).toMatch(/^keep has 1 cells/);
    expect(group(column(0, 0), column(1, 2))[0]![0]).toMatchObject({ kind: "unavailable" });
  });
});

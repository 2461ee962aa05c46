import { expect, it } from "vitest";
import { overlap } from "../../src/sheets/overlap.ts";
import { area } from "../../src/sheets/sheet-draft.ts";

it("overlap(a, b) is whether two areas share a cell, from either side; touching is not sharing", () => {
  const middle = area(5, 5, 2, 3);
  const shares = [
    area(5, 5),
    area(6, 7),
    area(0, 0, 6, 6),
    area(6, 7, 9, 9),
    area(0, 6, 20),
    area(5, 0, 1, 20),
  ];
  const apart = [
    ...[area(4, 5, 1, 3), area(7, 5, 1, 3), area(5, 4, 2), area(5, 8, 2)],
    ...[area(0, 0, 5, 20), area(7, 0, 5, 20), area(0, 0, 20, 5), area(0, 8, 20, 5)],
  ];
  for (const other of shares) expect([overlap(middle, other), overlap(other, middle)]).toEqual([true, true]);
  for (const other of apart) expect([overlap(middle, other), overlap(other, middle)]).toEqual([false, false]);
});

import { expect, it } from "vitest";
import { figureText } from "../../src/shots/figure-text.ts";

it("halves are rounded away from 0, as the cells beside the words show them", () => {
  // 17.45, 168.35 and 1.005 lie below their halves in binary; 0.15 + 0.2 makes 0.35 less its last bit.
  expect([17.45, 168.35, -17.45, 0.15 + 0.2].map((value) => figureText(value, 1))).toEqual([
    ...["17.5", "168.4", "-17.5", "0.4"],
  ]);
  expect([figureText(1.005, 2), figureText(168.5, 0), figureText(-0.5, 0)]).toEqual(["1.01", "169", "-1"]);
});

it("what is no half is rounded as ever, with all its decimals", () => {
  expect([figureText(17.449, 1), figureText(6000, 0), figureText(1.4, 2), figureText(0, 1)]).toEqual([
    ...["17.4", "6000", "1.40", "0.0"],
  ]);
});

import { expect, test } from "vitest";
import { checkColumns } from "../../../src/flight/impact/check-columns.ts";

// Source: the figures follow from the geometry of the delivery (spin loft 34.1, axis -4.6 for the sound shot).
const sound = {
  dynamicLoft: 30,
  attack: -4,
  face: -2,
  path: 1,
  spinLoft: 34.1,
  launch: 22,
  direction: -1.2,
  spinAxis: -4.6,
};

test("a table whose columns agree has no contradictions", () => {
  expect(checkColumns([sound])).toEqual([]);
});

test("each contradiction names the shot and what does not fit", () => {
  const found = checkColumns([
    sound,
    { ...sound, spinLoft: 26 },
    { ...sound, launch: 35 },
    { ...sound, direction: 5 },
    { ...sound, spinAxis: 8 },
  ]);
  expect(found.map(({ shot, check }) => [shot, check])).toEqual([
    [1, "spinLoft"],
    [2, "launch"],
    [3, "direction"],
    [4, "spinAxis"],
  ]);
  expect(found[0]!.message).toBe("spin loft 26 does not fit the 34.1 of loft and attack");
});

test("columns that are missing are not checked", () => {
  expect(checkColumns([{}, { spinLoft: 20 }, { dynamicLoft: Number.NaN, attack: 0, launch: 40 }])).toEqual(
    [],
  );
});

test("an axis that leans a little the wrong way is let pass", () => {
  expect(checkColumns([{ ...sound, spinAxis: 1 }])).toEqual([]);
});

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

test("angles up to the slack are let pass and those beyond it are not", () => {
  // Slack: 1.5 degrees for spin loft, launch and direction, 3 for the axis (common practice, no source).
  expect(checkColumns([{ dynamicLoft: 5, attack: 5, spinLoft: 1.5 }])).toEqual([]);
  expect(checkColumns([{ dynamicLoft: 5, attack: 5, spinLoft: 1.6 }])).toHaveLength(1);
  for (const launch of [-5.5, 31.5]) expect(checkColumns([{ ...sound, launch }])).toEqual([]);
  for (const launch of [-5.6, 31.6]) expect(checkColumns([{ ...sound, launch }])).toHaveLength(1);
  for (const direction of [-3.5, 2.5]) expect(checkColumns([{ ...sound, direction }])).toEqual([]);
  for (const direction of [-3.6, 2.6]) expect(checkColumns([{ ...sound, direction }])).toHaveLength(1);
  expect(checkColumns([{ ...sound, spinAxis: 3 }])).toEqual([]);
  expect(checkColumns([{ ...sound, spinAxis: 3.1 }])[0]!.message).toBe(
    "spin axis 3.1 leans against face to path -3.0",
  );
});

test("spin loft is held against loft and attack alone where face or path is missing", () => {
  expect(checkColumns([{ dynamicLoft: 30, attack: -4, face: 40, spinLoft: 34 }])).toEqual([]);
  expect(checkColumns([{ dynamicLoft: 30, attack: -4, path: 40, spinLoft: 34 }])).toEqual([]);
  expect(checkColumns([{ dynamicLoft: 30, attack: -4, spinLoft: 20 }])[0]!.message).toBe(
    "spin loft 20 does not fit the 34.0 of loft and attack",
  );
});

test("a spin axis is not checked where face or path is missing", () => {
  expect(checkColumns([{ path: 10, spinAxis: 30 }])).toEqual([]);
  expect(checkColumns([{ face: 10, spinAxis: -30 }])).toEqual([]);
});

test("figures without end count as missing", () => {
  const endless = Number.POSITIVE_INFINITY;
  expect(
    checkColumns([
      { dynamicLoft: 10, attack: -endless, launch: 20 },
      { dynamicLoft: -endless, attack: 10, launch: 20 },
      { face: 10, path: -endless, direction: 20 },
      { face: -endless, path: 10, direction: 20 },
      { ...sound, spinLoft: endless },
      { ...sound, launch: endless },
      { ...sound, direction: endless },
      { ...sound, spinAxis: endless },
    ]),
  ).toEqual([]);
});

import { expect, test } from "vitest";
import { ODD_NAMES, oddSession } from "./odd-session.ts";

test("the odd session is as odd as it says: three builds of odd names, one hit once, shots unticked, cells missing", () => {
  const { builds, baseline, table, player } = oddSession();
  expect(builds.map(({ name }) => name)).toEqual([...ODD_NAMES]);
  expect(baseline).toBe(ODD_NAMES[1]);
  expect(table.build.filter((name) => name === ODD_NAMES[2])).toHaveLength(1);
  expect(table.keep.filter((keep) => !keep)).toHaveLength(2);
  expect([...table.values.get("spin")!].some(Number.isNaN)).toBe(true);
  expect(table.extras.map(({ cells }) => cells.slice(0, 4))).toEqual([
    ["+1+1", "@x", "-2+3", '=HYPERLINK("x")'],
  ]);
  expect(player).toBe("@x (invented)");
});

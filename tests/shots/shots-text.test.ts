import { expect, test } from "vitest";
import { DEMO_TEXT } from "../../src/fitting/demo.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { METRICS, type MetricKey } from "../../src/shots/metrics.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";
import { shotsText } from "../../src/shots/shots-text.ts";

function read(text: string): ShotTable {
  const table = readShots(text);
  if (isProblem(table)) throw new Error(table.message);
  return table;
}

// Expected is the table itself: what is written must be read back as what it was.
test("some shots written as a text are read back with the same names and figures", () => {
  const table = read(DEMO_TEXT.replace("84.7", ""));
  const picked = [0, 5, 17, 23];
  const again = read(shotsText(table, picked));
  expect(again.problems).toEqual([]);
  expect(again.build).toEqual(picked.map((at) => table.build[at]));
  expect(again.shot).toEqual(picked.map((at) => table.shot[at]));
  expect([...again.values.keys()]).toEqual([...table.values.keys()]);
  for (const [key, values] of table.values) {
    expect([...again.values.get(key)!], key).toEqual(picked.map((at) => values[at]));
  }
});

test("every metric, shots left out and names with tabs come back too", () => {
  const table: ShotTable = {
    ...read("Build\tCarry\nA\t150\nB\t151"),
    build: ["A", "two\twords"],
    keep: [true, false],
    values: new Map(
      METRICS.map(({ key, least, most }): [MetricKey, Float64Array] => [
        key,
        new Float64Array([least + (most - least) / 3, Number.NaN]),
      ]),
    ),
  };
  const again = read(
    `${shotsText(table, [0])}\n${shotsText({ ...table, values: new Map([["carry", new Float64Array([1, 2])]]) }, [1]).split("\n")[1]}`,
  );
  for (const { key } of METRICS)
    expect(again.values.get(key)?.[0], key).toBeCloseTo(table.values.get(key)![0]!, 9);
  expect(
    read(shotsText({ ...table, values: new Map([["carry", new Float64Array([1, 2])]]) }, [0, 1])),
  ).toMatchObject({
    build: ["A", "two words"],
    keep: [true, false],
  });
});

test("columns of names and of what is kept are written only where there is something to say", () => {
  const table = read("Build,Club,Shot,Keep,Carry\nA,,1,yes,150\nB,7i,,no,151");
  const heading = (shots: readonly number[]) => shotsText(table, shots).split("\n")[0];
  expect(heading([0])).toBe("Build\tShot\tCarry (yd)");
  expect(heading([1])).toBe("Build\tClub\tKeep\tCarry (yd)");
  expect(heading([0, 1])).toBe("Build\tClub\tShot\tKeep\tCarry (yd)");
  expect(shotsText(table, [0, 1]).split("\n")[2]).toBe("B\t7i\t\tno\t151");
  expect(shotsText({ ...table, build: ["a\n\tb", "B"] }, [0]).split("\n")[1]).toBe("a b\t1\t150");
});

import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../src/outcome/problem.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";
import { KEYS, SHOTS } from "./tables/session.ts";

const folder = new URL("./tables/", import.meta.url);
const tables = readdirSync(folder).filter((name) => name.endsWith(".txt"));
const read = (name: string) => readShots(readFileSync(new URL(name, folder), "utf8")) as ShotTable;

// The session is written once, in session.ts, by itself; every table is that session in another habit.
describe("readShots(text) of one session in many habits", () => {
  it("has at least eight habits to read", () => {
    expect(tables.length).toBeGreaterThanOrEqual(8);
  });

  it.each(tables)("%s gives the shots of the session", (name) => {
    const table = read(name);
    expect(isProblem(table)).toBe(false);
    expect(table.size).toBe(SHOTS.length);
    expect(table.build).toEqual(SHOTS.map(([build]) => build));
    expect(table.keep.every((keep) => keep)).toBe(true);
    expect([...table.values.keys()].sort()).toEqual([...KEYS].sort());
    KEYS.forEach((key, place) => {
      const column = table.values.get(key)!;
      SHOTS.forEach((row, shot) => {
        const figure = row[place + 1] as number | null;
        if (figure === null) expect(column[shot]).toBeNaN();
        else expect(Math.abs(column[shot]! - figure)).toBeLessThanOrEqual(1e-12 * Math.abs(figure));
      });
    });
  });

  it.each(tables)("%s leaves nothing to look at, and every record is a shot or listed", (name) => {
    const table = read(name);
    expect(table.problems).toEqual([]);
    const rows = [...table.row, ...table.skipped.map(({ row }) => row)];
    expect(new Set(rows).size).toBe(rows.length);
  });
});

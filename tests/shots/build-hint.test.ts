import { describe, expect, it } from "vitest";
import { buildHint } from "../../src/shots/build-hint.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

describe("buildHint(extras, size)", () => {
  it("points out an unknown column whose few words repeat", () => {
    expect(buildHint([{ header: "Wand", cells: ["A", "a", "B", "B"] }], 4)).toMatch(/"Wand".*2 words/);
  });
  it("passes over remarks, numbers, gaps and a word for every shot", () => {
    expect(buildHint([{ header: "Notes", cells: ["good", "", "toe", "good"] }], 4)).toBeNull();
    expect(buildHint([{ header: "Ball", cells: ["1", "1", "2", "2"] }], 4)).toBeNull();
    expect(buildHint([{ header: "Id", cells: ["a", "b", "c", "d"] }], 4)).toBeNull();
  });
  it("stands among the notes only where no build was found", () => {
    const table = readShots("Wand,Carry (yd)\nA,150\nA,151\nB,152\nB,153") as ShotTable;
    expect(table.notes.join(" ")).toContain('"Wand" was not known');
    const known = readShots("Build,Wand,Carry (yd)\nX,A,150\nX,A,151\nY,B,152\nY,B,153") as ShotTable;
    expect(known.notes.join(" ")).not.toContain('"Wand" was not known');
  });
});

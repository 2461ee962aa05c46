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

describe("the words of an unknown column", () => {
  const cells = (words: number, each: number) =>
    Array.from({ length: words * each }, (_, place) => `w${place % words}`);
  const hint = (some: readonly string[]) => buildHint([{ header: "Wand", cells: some }], some.length);

  it("must be two at least, twelve at most, and come twice each on average", () => {
    expect(hint(cells(1, 4))).toBeNull();
    expect(hint(cells(2, 2))).toContain("2 words");
    expect(hint(cells(12, 2))).toContain("12 words");
    expect(hint(cells(13, 2))).toBeNull();
    expect(hint(["a", "b", "a"])).toBeNull();
  });

  it("must each hold a letter, whatever its case", () => {
    expect(hint(["A", "7", "A", "7"])).toBeNull();
    expect(hint(["Straße", "strasse", "Straße", "strasse"])).toContain("2 words");
  });

  it("are looked for in every such column", () => {
    const extras = [
      { header: "Id", cells: ["a", "b", "c", "d"] },
      { header: "Wand", cells: ["A", "A", "B", "B"] },
    ];
    expect(buildHint(extras, 4)).toContain('"Wand"');
  });
});

import { describe, expect, it } from "vitest";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

const builds = (text: string, build?: string) =>
  (readShots(text, build === undefined ? {} : { build }) as ShotTable).build;

/** What the notes say of the builds of these shots, without the words that only dress it. */
const told = (text: string, build?: string) =>
  (readShots(text, build === undefined ? {} : { build }) as ShotTable).notes.flatMap((note) => {
    if (/from their column/.test(note)) return ["column"];
    if (/from the title lines/.test(note)) return ["titles"];
    const counted = /^(1 shot|\d+ shots) with(?: a blank build|out a build.*"(.*)")/.exec(note);
    return counted ? [`${counted[1]} ${counted[2] ?? "as above"}`] : [];
  });

describe("assignBuilds(text, shots, options), seen through readShots", () => {
  it("carries a name down where the column gives each name once", () => {
    expect(builds("Build,Carry\nA,150\n,151\nB,152\n,153\n")).toEqual(["A", "A", "B", "B"]);
  });

  it("carries a name down that stands in a row of its own in the column of builds", () => {
    expect(builds("Build,Carry,Total\nA,,\n,150,160\n,151,161\nB,,\n,152,162\n")).toEqual(["A", "A", "B"]);
  });

  it("believes title lines that say Build or Shaft over those that do not", () => {
    expect(
      builds("Harrow Lane\nBuild: A\nCarry,Total\n150,160\nafter lunch\n151,161\nShaft: B\n152,162\n"),
    ).toEqual(["A", "A", "B"]);
  });

  it("believes the column of builds over a title", () => {
    expect(builds("Harrow Lane\nBuild,Carry\nA,150\nB,151\n")).toEqual(["A", "B"]);
  });

  it("takes the title nearest above the shots, across blank lines", () => {
    expect(builds("Harrow Lane\n\nA\n\nCarry,Total\n150,160\n\nB\n\nCarry,Total\n151,161\n")).toEqual([
      "A",
      "B",
    ]);
  });

  it("lets a title between blocks win over the name for shots without a build", () => {
    expect(builds("A\nCarry,Total\n150,160\nB\n151,161\n", "Mine")).toEqual(["A", "B"]);
  });

  it("takes a name given by the fitter for the lone title of a file, not a blank one", () => {
    const text = "Session\nCarry,Total\n150,160\n151,161\n";
    expect(builds(text, " Mine ")).toEqual(["Mine", "Mine"]);
    expect(builds(text, "  ")).toEqual(["Session", "Session"]);
    expect(builds(text)).toEqual(["Session", "Session"]);
    expect(builds("Carry,Total\n150,160\n", " Mine ")).toEqual(["Mine"]);
  });

  it("carries no name down where the column repeats one", () => {
    expect(builds("Build,Carry\nA,150\nA,151\n,152\nB,153\n")).toEqual(["A", "A", "Build 1", "B"]);
  });

  it("carries a name down within its own block only", () => {
    expect(builds("Build,Carry\nA,150\n,151\n\nCarry,Total\n150,160\n")).toEqual(["A", "A", "Build 1"]);
  });

  it.each([
    ["Build,Carry\nA,150\nA,151\n", undefined, ["column"]],
    ["Build,Carry\nA,150\n,151\nB,152\n,153\n", undefined, ["column", "2 shots as above"]],
    ["Build,Carry\n,150\nA,151\n,152\n", undefined, ["column", "1 shot as above", "1 shot Build 1"]],
    ["Build: A\nCarry,Total\n150,160\n", undefined, ["titles"]],
    ["Carry,Total\n150,160\n151,161\n", " Mine ", ["2 shots Mine"]],
  ])("says of %j where its builds are from", (text, build, notes) => {
    expect(told(text, build)).toEqual(notes);
  });

  it("names the cell of a column of builds that holds none, and no cell where there is no such column", () => {
    const problems = (text: string) => (readShots(text) as ShotTable).problems;
    expect(problems("Build,Carry\nA,150\nA,151\n -- ,152\n")).toMatchObject([
      { row: 4, column: 1, found: "--" },
    ]);
    expect(problems("Carry,Total\n150,160\n")).toEqual([]);
  });
});

describe("what is said of shots without a build", () => {
  it("counts one and more of them", () => {
    const said = (text: string) =>
      (readShots(text) as ShotTable).notes.filter((note) => note.includes("without a build"));
    expect(said("Carry\n150")).toEqual(['1 shot without a build stands under "Build 1".']);
    expect(said("Carry\n150\n151")).toEqual(['2 shots without a build stand under "Build 1".']);
  });
});

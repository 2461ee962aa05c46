import { describe, expect, it } from "vitest";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

const builds = (text: string, build?: string) =>
  (readShots(text, build === undefined ? {} : { build }) as ShotTable).build;

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
});

import { describe, expect, it } from "vitest";
import { readShots } from "../../src/shots/read-shots.ts";
import { proposeOutliers } from "../../src/shots/screening.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

const table = (rows: string[]) => readShots(["Build,Keep,Carry,Spin", ...rows].join("\n")) as ShotTable;

describe("proposeOutliers(table, keys)", () => {
  // Worked by hand from Iglewicz and Hoaglin (1993), 0.6745 (x - median) / MAD: median 151, MAD 1, so a carry of
  // 120 scores 0.6745 * -31 = -20.9095.
  const shots = table([
    "A,,150,2500",
    "A,,151,2510",
    "A,,152,2490",
    "A,,151.5,2505",
    "A,,120,2500",
    "B,,120,2500",
  ]);

  it("proposes what lies beyond a modified z-score of 3.5 within its build", () => {
    const [proposal, ...more] = proposeOutliers(shots);
    expect(more).toEqual([]);
    expect(proposal).toMatchObject({ row: 6, index: 4, build: "A", key: "carry", value: 120 });
    expect(proposal!.score).toBeCloseTo(-20.9095, 10);
    expect(proposal!.message).toContain("Row 6 (A): carry 120.0 yd lies far below");
  });

  it("speaks in the units that are shown", () => {
    // By hand: 120 x 0.9144 = 109.728.
    expect(proposeOutliers(shots, ["carry"], "metric")[0]!.message).toContain("carry 109.7 m lies far below");
  });

  it("looks at the metrics asked for, and changes nothing", () => {
    expect(proposeOutliers(shots, ["spin"])).toEqual([]);
    expect(shots.keep.every((keep) => keep)).toBe(true);
  });

  it("passes over shots that are left out and builds of fewer than five", () => {
    expect(proposeOutliers(table(["A,,150,1", "A,,151,1", "A,,152,1", "A,,151.5,1", "A,no,120,1"]))).toEqual(
      [],
    );
    expect(proposeOutliers(table(["A,,150,", "A,,151,", "A,,152,", "A,,20,"]))).toEqual([]);
  });
});

describe("what is proposed", () => {
  it("comes shot by shot, whatever the order of the figures, with the side it lies on", () => {
    const shots = table([
      "A,,150,2500",
      "A,,151,9000",
      "A,,152,2490",
      "A,,151.5,2505",
      "A,,120,2500",
      "A,,151,2501",
    ]);
    const otherWay = table(["A,,150,2500", "A,,120,2501", "A,,152,2490", "A,,151.5,2505", "A,,151,9000"]);
    expect(proposeOutliers(otherWay).map(({ index, key }) => [index, key])).toEqual([
      [1, "carry"],
      [4, "spin"],
    ]);
    expect(proposeOutliers(shots).map(({ index, key }) => [index, key])).toEqual([
      [1, "spin"],
      [4, "carry"],
    ]);
    expect(proposeOutliers(shots).map(({ message }) => /far (\w+)/.exec(message)![1])).toEqual([
      "above",
      "below",
    ]);
  });

  it("passes over blanks and over figures that the table does not have", () => {
    const shots = table(["A,,150,", "A,,151,", "A,,,", "A,,152,", "A,,151.5,", "A,,20,2500"]);
    expect(proposeOutliers(shots, ["total", "carry"]).map(({ index }) => index)).toEqual([4]);
    expect(
      proposeOutliers(table(["A,,150,1", "A,,151,1", "A,,,1", "A,,152,1", "A,,20,1"]), ["carry"]),
    ).toEqual([]);
  });

  it("is nothing where a build's figures are all the same", () => {
    expect(proposeOutliers(table(["A,,150,1", "A,,150,1", "A,,150,1", "A,,150,1", "A,,150,1"]))).toEqual([]);
  });
});

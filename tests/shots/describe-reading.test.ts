import { describe, expect, it } from "vitest";
import { describeReading } from "../../src/shots/describe-reading.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

describe("describeReading(table)", () => {
  it("says in plain sentences what was understood and what was left out", () => {
    const text =
      "Build,Carry (m),Total,Mood,Keep\nA,150,160,good,yes\nB,151,abc,poor,no\n\nAverage,150,160,,\n";
    expect(describeReading(readShots(text) as ShotTable)).toEqual([
      "2 shots of 2 builds: A and B.",
      "1 shot marked as not to count.",
      'Columns: build from "Build", carry from "Carry (m)" in m, total from "Total" in yd (not stated, taken as usual) and keep from "Keep".',
      'Not recognised and kept as they are: "Mood".',
      "Cells are parted by comma; the decimal mark is a point.",
      "Total states no unit and was taken in yd, though Carry (m) is in m.",
      "Builds were taken from their column.",
      "Left out as the header: row 1.",
      "Left out as an empty row: row 4.",
      "Left out as a summary row: row 5.",
      "To look at: 2 cells.",
    ]);
  });
});

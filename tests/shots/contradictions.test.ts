import { describe, expect, it } from "vitest";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

const found = (header: string, ...rows: string[]) =>
  (readShots([header, ...rows].join("\n")) as ShotTable).problems.map(({ row, column }) => [row, column]);

// The limits are the project's own: 2 %, 0.2 degrees, rounding of what is shown, `least` and `most` of METRICS.
describe("contradictions(values, rows, source)", () => {
  it("flags a smash factor more than 2 % off ball speed over club speed", () => {
    expect(
      found("Club Speed,Ball Speed,Smash", "100,150,1.53", "100,150,1.54", "100,150,1.47", "100,150,1.46"),
    ).toEqual([
      [3, 3],
      [5, 3],
    ]);
  });

  it("flags face to path that is not face less path, past the rounding of three figures", () => {
    expect(found("Face,Path,FTP", "2.0,1.0,1.2", "2.0,1.0,1.3", "-2.0,1.0,-3.0", "-2.0,1.0,3.0")).toEqual([
      [3, 3],
      [5, 3],
    ]);
  });

  it("flags a carry beyond the total, but not by rounding", () => {
    expect(found("Carry,Total", "150.4,150", "151.0,150", "150.1,150.0", "150.2,150.0")).toEqual([
      [3, 1],
      [5, 1],
    ]);
  });

  it("flags spin that is not what backspin and sidespin make", () => {
    // 3-4-5: 2400 and 700 make 2500.
    expect(found("Spin,Backspin,Sidespin", "2500,2400,700", "2600,2400,700")).toEqual([[3, 1]]);
  });

  it("says nothing where a figure of the three is not there, in the table or in the row", () => {
    for (const header of ["Ball Speed,Smash", "Club Speed,Smash"])
      expect(found(header, "100,1.2")).toEqual([]);
    expect(found("Club Speed,Ball Speed", "100,190")).toEqual([]);
    expect(found("Club Speed,Ball Speed,Smash", "100,,1.2", ",150,1.2", "100,150,")).toEqual([]);
    for (const header of ["Path,FTP", "Face,FTP", "Face,Path"]) expect(found(header, "1.0,9.0")).toEqual([]);
    for (const header of ["Backspin,Spin", "Sidespin,Spin", "Backspin,Sidespin"])
      expect(found(header, "700,5000")).toEqual([]);
    expect(found("Carry,Total", "150,", ",150")).toEqual([]);
  });

  it("lets a figure lie right on a limit, on either side", () => {
    // By METRICS: ball speed 15 to 230 mph.
    expect(found("Ball Speed", "15.0", "230.0")).toEqual([]);
    expect(found("Ball Speed", "14.9", "230.1")).toEqual([
      [2, 1],
      [3, 1],
    ]);
    // 2 % of 1.5 is 0.03; 2 % of 2500, and 1 for rounding, is 51.
    expect(found("Club Speed,Ball Speed,Smash", "100,150,1.53", "100,150,1.47")).toEqual([]);
    expect(found("Spin,Backspin,Sidespin", "2551,2400,700", "2449,2400,700")).toEqual([]);
    expect(found("Spin,Backspin,Sidespin", "2552,2400,700", "2448,2400,700")).toEqual([
      [2, 1],
      [3, 1],
    ]);
    expect(found("Carry,Total", "150,150")).toEqual([]);
  });

  it("takes the rounding of carry and total from what each cell shows", () => {
    // Half a last place of each, times a metre in yards: 150 and 149 may both be 149.5; 150.0 and 149.0 may not.
    expect(
      found("Carry,Total", "150,149", "150.0,149.0", "150.0 yd,149 yd", "150.00,149.9", "150.00,149.99"),
    ).toEqual([
      [3, 1],
      [4, 1],
      [5, 1],
    ]);
  });

  it("quotes the cell without the gaps around it", () => {
    const table = readShots("Ball Speed,Spin\n 900 ,6000\n") as ShotTable;
    expect(table.problems[0]!.found).toBe("900");
  });

  it("speaks in the unit that the figures came in", () => {
    const said = (readShots("Ball Speed [km/h],Carry [m],Total [m]\n900,150,140.5\n") as ShotTable).problems;
    // By hand: 15 and 230 miles of 1.609344 km are 24.14 and 370.15 km.
    expect(said.map(({ message }) => message)).toEqual([
      'Row 2, column 1 (Ball speed): found "900"; a shot has 24.1 to 370.1 km/h. It is left as it is.',
      'Row 2, column 2 (Carry): found "150"; the total is only 140.5 m. Both are left as they are.',
    ]);
  });

  it("flags what no shot has, in a sentence, and leaves it", () => {
    const table = readShots("Ball Speed,Landing Angle\n900,45\n150,95\n") as ShotTable;
    expect(table.problems).toEqual([
      {
        row: 2,
        column: 1,
        found: "900",
        message: 'Row 2, column 1 (Ball speed): found "900"; a shot has 15 to 230 mph. It is left as it is.',
      },
      {
        row: 3,
        column: 2,
        found: "95",
        message:
          'Row 3, column 2 (Landing angle): found "95"; a shot has 0 to 90 degrees. It is left as it is.',
      },
    ]);
    expect([...table.values.get("ballSpeed")!]).toEqual([900, 150]);
  });

  it("finds nothing where figures are missing", () => {
    expect(found("Club Speed,Ball Speed,Smash,Carry,Total", "100,,1.53,150,", ",150,1.2,,160")).toEqual([]);
  });
});

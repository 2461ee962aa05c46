import { describe, expect, it } from "vitest";
import { read } from "./read.ts";

/** Rows that are no shots, each with why. */
const skipped = (...lines: string[]) =>
  Object.fromEntries(read(lines).skipped.map(({ row, reason }) => [row, reason]));
const HEAD = "Build,Carry,Spin";

describe("gatherShots(text, headerAt, options), rows that are no shots", () => {
  it("are told why, each, above the header", () => {
    expect(
      skipped("A line, of words, or three", "", "Player: Rowan", "Red wand", HEAD, "A,150,6000"),
    ).toEqual({
      1: "a line above the table",
      2: "an empty row",
      3: "a line about the session",
      4: 'a title line: "Red wand"',
      5: "the header",
    });
  });

  it("are told why, each, below it", () => {
    expect(
      skipped(
        HEAD,
        "A,150,6000",
        ",,",
        "---,---,---",
        HEAD,
        "Average,150,6000",
        "A,,",
        "A,0,0",
        "Coach: Ann,,",
        "B,151,6100",
      ),
    ).toEqual({
      1: "the header",
      3: "an empty row",
      4: "a ruled line",
      5: "a repeated header",
      6: 'a summary row: "Average"',
      7: 'a title line: "A"',
      8: "no figure but 0: the shot was not measured",
      9: "a line about the session",
    });
    expect(skipped(HEAD, "A,150,6000", "A,x,y")[3]).toMatch(/^no figure in any column/);
  });

  it("tell the first header from one with other columns, and both from their second rows", () => {
    expect(skipped("Carry,Spin", "yd,rpm", "150,6000", "Carry,Height", "yd,ft", "151,90")).toEqual({
      1: "the header",
      2: "the header's second row",
      4: "another header, with other columns",
      5: "the header's second row",
    });
  });

  it("are told in the order of their rows", () => {
    const { skipped: rows } = read([
      "Carry,Spin",
      "150,6000",
      "Average,6000",
      "",
      "Red wand",
      "Carry,Spin",
      "151,6100",
    ]);
    const numbers = rows.map(({ row }) => row);
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
  });

  it("leave no doubt behind that was about a cell of theirs", () => {
    expect(read([HEAD, "A,150,6000", "Average,150,about", "A,151,6100"]).problems).toEqual([]);
    expect(read([HEAD, "A,150,6000", "Build,Carry,Spin", "A,151,6100"]).problems).toEqual([]);
    expect(read([HEAD, "A,150,odd", "Average,150,odd"]).problems).toHaveLength(1);
  });

  it("quote a summary word without the gaps around it", () => {
    expect(skipped(HEAD, "A,150,6000", " Average ,150,6000")[3]).toBe('a summary row: "Average"');
  });
});

describe("gatherShots(text, headerAt, options), figures", () => {
  it("come in the order of METRICS, whatever the order of the columns", () => {
    const table = read(["Offline,Carry,Ball Speed,Club Speed", "1,150,120,85"]);
    expect([...table.values.keys()]).toEqual(["clubSpeed", "ballSpeed", "carry", "offline"]);
  });

  it("are turned into the usual unit by one rounding, and keep no minus before a 0", () => {
    const table = read(["Carry [m],Offline [m] (L+)", "137.16,0", "91.44,4.572"]);
    // By definition: a yard is 0.9144 m.
    expect([...table.values.get("carry")!]).toEqual([150, 100]);
    expect([...table.values.get("offline")!]).toEqual([0, -5]);
    expect(Object.is(table.values.get("offline")![0], 0)).toBe(true);
  });

  it("are multiplied where their unit is larger than the usual one", () => {
    // By definition: an inch is 25.4 mm (international yard and pound agreement of 1959), a centimetre 10.
    expect([...read(["Carry,Impact X (in)", "150,0.5"]).values.get("strikeX")!]).toEqual([12.7]);
    expect([...read(["Carry,Impact X (cm)", "150,-1.2"]).values.get("strikeX")!]).toEqual([-12]);
  });

  it("take a 0 for a blank where no shot has it, and say in which rows", () => {
    const table = read(["Carry,Spin,Offline", "150,0,0", "151,6000,0", "152,0.0,1", "153,,2", "154,n/a,3"]);
    expect([...table.values.get("spin")!]).toEqual([Number.NaN, 6000, Number.NaN, Number.NaN, Number.NaN]);
    expect([...table.values.get("offline")!]).toEqual([0, 0, 1, 2, 3]);
    expect(table.notes).toContain("Spin of 0 was taken for a blank, as no shot has it: rows 2, 4.");
    expect(table.notes.join()).not.toContain("Offline of 0");
  });

  it("leave out a shot with nothing but noughts, and keep one with a figure beside them", () => {
    expect(read(["Carry,Spin,Offline", "0,0,0", "0,6000,0", "150,0,1"]).row).toEqual([3, 4]);
  });

  it("take their sign from the column of sides beside them, the first of the table too", () => {
    const table = read(["L/R,Offline,Carry", "L,5,150", "R,4,151", ",3,152"]);
    expect([...table.values.get("offline")!]).toEqual([-5, 4, 3]);
  });

  it("that contradict their side are left out, with both named", () => {
    const table = read(["Offline,L/R,Carry", "5,L,150", "-4,R,151", "3,up,152"]);
    expect([...table.values.get("offline")!]).toEqual([-5, Number.NaN, Number.NaN]);
    expect(table.problems.map(({ row, column, found }) => [row, column, found])).toEqual([
      [3, 1, "-4 R"],
      [4, 1, "3 up"],
    ]);
    expect(table.problems[0]!.message).toContain('found "-4" beside "R" in column 2');
  });
});

describe("gatherShots(text, headerAt, options), cells beyond the last heading", () => {
  it("are pointed at by their place, empty ones are not", () => {
    expect(read(["Carry,Spin", "150,6000", "151,6000,", "152,6000, wind , ,left"]).problems).toMatchObject([
      { row: 4, column: 3, found: "wind", message: expect.stringMatching(/^Row 4, column 3: /) },
      { row: 4, column: 5, found: "left", message: expect.stringMatching(/^Row 4, column 5: /) },
    ]);
  });
});

describe("gatherShots(text, headerAt, options), titles", () => {
  it("name the build of the shots below them, each until the next", () => {
    const table = read([
      "Red wand",
      "Carry,Spin",
      "150,6000",
      "Blue wand",
      "Carry,Spin",
      "151,6100",
      "152,6200",
    ]);
    expect(table.build).toEqual(["Red wand", "Blue wand", "Blue wand"]);
  });

  it("right above a header count, and remarks in between do not", () => {
    const lines = [
      "Red wand",
      "Carry,Spin",
      "150,6000",
      "Windy now",
      "151,6100",
      "Blue wand",
      "Carry,Spin",
      "152,6200",
    ];
    expect(read(lines).build).toEqual(["Red wand", "Red wand", "Blue wand"]);
  });

  it("stand in the first column, or in that of the builds", () => {
    expect(read(["Build,Carry,Note", "A,150,", ",,windy", "A,151,"]).skipped.at(-1)!.reason).toMatch(
      /^no figure/,
    );
    expect(read(["Carry,Build,Note", ",Red wand,", "150,,", ",Blue wand,", "151,,"]).build).toEqual([
      "Red wand",
      "Blue wand",
    ]);
    expect(read([",Carry,Spin", ",150,6000", ",Blue wand,", ",151,6100"]).build).toEqual([
      "Build 1",
      "Blue wand",
    ]);
  });
});

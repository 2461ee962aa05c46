import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../src/outcome/problem.ts";
import type { ReadOptions } from "../../src/shots/read-options.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

function read(text: string, options?: ReadOptions): ShotTable {
  const table = readShots(text, options);
  if (isProblem(table)) throw new Error(table.message);
  return table;
}

const column = (table: ShotTable, key: "carry" | "spin" | "offline" | "launch" | "height") => [
  ...table.values.get(key)!,
];

describe("readShots(text) when there is no shot", () => {
  it.each([
    ["", /empty/],
    ["hello\nworld", /row 1 to 2.*headings/],
    ["{", /^Row 1, the only one, has no headings/],
    ["Carry,Total\n", /row 2 on/],
    ["Carry,Total\nAverage,150\n", /row 2 on/],
  ])("answers one sentence for %j", (text, sentence) => {
    const outcome = readShots(text);
    expect(isProblem(outcome) && outcome.message).toMatch(sentence);
  });
});

describe("readShots(text) and builds", () => {
  it("takes names that differ in case and spaces for one build, by the first spelling", () => {
    const table = read("Build,Carry\n95 g Mid,150\n95  G MID ,151\n 95 g mid,152\n");
    expect(table.build).toEqual(["95 g Mid", "95 g Mid", "95 g Mid"]);
  });

  it("never takes a shot for a summary row because of its build's name", () => {
    const table = read(
      "Build,Shot,Carry\nMean Machine,1,150\nMean Machine,2,151\nMax,3,149\nTotal 95,4,148\nAverage,,150\nMean Machine average,,150\n",
    );
    expect(table.build).toEqual(["Mean Machine", "Mean Machine", "Max", "Total 95"]);
    expect(table.skipped.map(({ row }) => row)).toEqual([1, 6, 7]);
  });

  it("names a single build by the option, or else Build 1", () => {
    expect(read("Carry\n150\n").build).toEqual(["Build 1"]);
    expect(read("Carry\n150\n", { build: "105 g" }).build).toEqual(["105 g"]);
    expect(read("Some export\nCarry\n150\n", { build: "105 g" }).build).toEqual(["105 g"]);
  });

  it("lists a shot whose build is blank among named ones", () => {
    const table = read("Build,Carry\nA,150\nA,151\n,152\nB,150\n", { build: "Mine" });
    expect(table.build).toEqual(["A", "A", "Mine", "B"]);
    expect(table.problems).toMatchObject([{ row: 4, column: 1, found: "" }]);
  });

  it("notes that clubs are not taken for builds", () => {
    const table = read("Club,Carry\nSeven,150\nEight,140\n");
    expect(table.club).toEqual(["Seven", "Eight"]);
    expect(table.notes.join(" ")).toContain("clubs were not taken for builds");
  });

  it("leaves a remark alone where titles stand above headers", () => {
    const table = read("A\nShot,Carry\n1,150\nwindy now\n2,151\nB\nShot,Carry\n1,152\n");
    expect(table.build).toEqual(["A", "A", "B"]);
  });
});

describe("readShots(text) and what it cannot read", () => {
  it("lists each cell with its row, column, what was found and what would do", () => {
    const table = read("Shot,Ball Speed,Spin,Carry,Offline\n1,140,2500,abc,+4 L\n2,141,2500,152 mph,3\n");
    expect(table.problems).toEqual([
      {
        row: 2,
        column: 4,
        found: "abc",
        message: 'Row 2, column 4 (Carry): found "abc"; a number in yards such as 152.3 would do.',
      },
      {
        row: 2,
        column: 5,
        found: "+4 L",
        message:
          'Row 2, column 5 (Offline): found "+4 L"; a number in yards such as -12.3 or 12.3 L would do.',
      },
      {
        row: 3,
        column: 4,
        found: "152 mph",
        message: 'Row 3, column 4 (Carry): found "152 mph"; a number in yards such as 152.3 would do.',
      },
    ]);
    expect(column(table, "carry")).toEqual([Number.NaN, Number.NaN]);
  });

  it("takes a short row's end for missing, and lists what stands beyond the last heading", () => {
    const table = read("Shot,Carry,Offline\n1,150\n2,151,3,7,\n");
    expect(column(table, "offline")).toEqual([Number.NaN, 3]);
    expect(table.problems).toMatchObject([{ row: 3, column: 4, found: "7" }]);
  });

  it("knows a summary row by a label that begins with the build's name", () => {
    const table = read("Shot\tCarry\n95 g mid\t\n1\t150\n95 g mid Average\t150\n2nd half\t151\n");
    expect(table.row).toEqual([3, 5]);
  });

  it("knows a repeated header of one heading, and one that begins with Total", () => {
    expect(read("Carry\n150\nCarry\n151\n").skipped.at(-1)).toEqual({ row: 3, reason: "a repeated header" });
    expect(read("Total,Carry\n160,150\nTotal,Carry\n161,151\n").skipped.at(-1)!.reason).toBe(
      "a repeated header",
    );
  });

  it("reads a block under another header by that header", () => {
    const table = read("Build,Carry,Total\nA,150,160\nBuild,Total,Carry,Spin\nB,161,151,2400\n");
    expect(column(table, "carry")).toEqual([150, 151]);
    expect(column(table, "spin")).toEqual([Number.NaN, 2400]);
    expect(table.problems).toEqual([]);
  });

  it("takes a 0 that no shot has for a blank and says where", () => {
    const table = read("Shot,Carry,Spin,Offline\n1,150,0,0\n2,0,0,0\n3,151,2400,-0.0\n");
    expect(column(table, "spin")).toEqual([Number.NaN, 2400]);
    expect(column(table, "offline")).toEqual([0, 0]);
    expect(table.notes.join(" ")).toContain("Spin of 0 was taken for a blank, as no shot has it: row 2.");
    expect(table.skipped.at(-1)).toEqual({ row: 3, reason: "no figure but 0: the shot was not measured" });
  });

  it("keeps unknown columns as text, and every second column of one thing", () => {
    const table = read("Carry,Carry,constructor,__proto__,Notes\n150,151, a ,=1+1,@x\n");
    expect(table.extras).toEqual([
      { header: "Carry", cells: ["151"] },
      { header: "constructor", cells: ["a"] },
      { header: "__proto__", cells: ["=1+1"] },
      { header: "Notes", cells: ["@x"] },
    ]);
    expect(table.problems).toMatchObject([{ row: 1, column: 2, found: "Carry" }]);
  });

  it("names the columns that no figure comes from, and says nothing where all were recognised", () => {
    const said = (text: string) => read(text).notes.filter((note) => note.startsWith("Not recognised"));
    expect(said("Carry,Lust,Spin,Wind\n150,3,6000,2\n")).toEqual([
      'Not recognised, kept beside the shots and left out of every figure: "Lust", "Wind".',
    ]);
    expect(said("Carry,,Spin\n150,,6000\n")).toEqual([]);
    const many = Array.from({ length: 14 }, (_, place) => `Word${place}`);
    expect(said(`Carry,${many}\n150,${many}\n`)[0]).toMatch(/"Word11" and 2 more\.$/);
    expect(said(`Carry,${"x".repeat(50)}\n150,1\n`)[0]).toContain(`"${"x".repeat(39)}…"`);
  });

  it("reads quotation marks as plain characters where one is never closed", () => {
    const table = read('Build,Carry\n"95 g,150\n45" mid,151\n');
    expect(table.build).toEqual(['"95 g', '45" mid']);
    expect(table.notes.join(" ")).toContain("not closed");
  });

  it("counts rows by the line of the text, past line breaks in quoted cells", () => {
    const table = read('Carry,Notes\r\n150,"low,\r\nthin"\r\nabc,x\r\n151,\r\n');
    expect(table.row).toEqual([2, 5]);
    expect(table.problems).toMatchObject([{ row: 4, column: 1 }]);
    expect(table.extras[0]!.cells).toEqual(["low,\nthin", ""]);
  });
});

describe("readShots(text) and figures", () => {
  it("reads a doubtful mark by the rest of the table and by what a shot can have", () => {
    const both = read("Spin\tLaunch\n2,450\t16,234\n2,512\t15,122\n");
    expect(column(both, "spin")).toEqual([2450, 2512]);
    expect(column(both, "launch")).toEqual([16.234, 15.122]);
    expect(column(read("Spin\tLaunch\n2,450\t16,2\n"), "spin")).toEqual([2450]);
    expect(column(read("Spin\tCarry\n2.450\t150,5\n"), "spin")).toEqual([2450]);
  });

  it("lets a unit behind a figure go before the heading's", () => {
    const table = read("Carry (yd),Total\n150,160\n137.16 m,161 yd\n");
    expect(column(table, "carry")).toEqual([150, 150]);
    expect(table.columns.map(({ unitFrom }) => unitFrom)).toEqual(["header", "cells"]);
  });

  it("says which unit was taken as usual beside one that is stated", () => {
    const table = read("Carry (m),Height\n150,30\n");
    // 150 / 0.9144, the international yard: NIST Special Publication 811 (2008), appendix B.8.
    expect(column(table, "carry")).toEqual([150 / 0.9144]);
    expect(table.columns[1]).toMatchObject({ unit: "ft", unitFrom: "assumed" });
    expect(table.notes.join(" ")).toContain("Height states no unit and was taken in ft");
    // Two units that are both stated are nobody's silence, though they differ.
    expect(read("Carry (m),Height (ft)\n150,90\n").notes.join(" ")).not.toContain("states no unit");
  });

  it("turns the signs of a column that counts left as positive, but not words", () => {
    const table = read("Offline (L+),Carry\n12,150\n-3,151\nL 4,150\n");
    expect(column(table, "offline")).toEqual([-12, 3, -4]);
  });

  it("mirrors nothing for a left-handed player", () => {
    const right = read("Offline,Carry\n12,150\n");
    const left = read("Offline,Carry\n12,150\n", { leftHanded: true });
    expect(column(left, "offline")).toEqual(column(right, "offline"));
    expect(left.notes.join(" ")).toContain("no figure was mirrored");
  });
});

describe("readShots(text) and sides in a column of their own", () => {
  it("gives their sign to the figures beside them", () => {
    const table = read("Carry,Offline,L/R\n150,12,L\n151,3,R\n150,0,\n152,-4,R\n");
    expect(column(table, "offline")).toEqual([-12, 3, 0, Number.NaN]);
    expect(table.problems).toMatchObject([{ row: 5, column: 2, found: "-4 R" }]);
    expect(table.problems[0]!.message).toMatch(/^Row 5, column 2 \(/);
    expect(table.extras).toEqual([{ header: "L/R", cells: ["L", "R", "", "R"] }]);
  });

  it("leaves the name to the column of figures where both are called alike", () => {
    const table = read("Carry,Side,Offline\n150,left,12\n151,right,3\n");
    expect(column(table, "offline")).toEqual([-12, 3]);
    expect(table.problems).toEqual([]);
  });

  it("does not take the player's hand for a side", () => {
    expect(column(read("Offline,Hand\n-12,R\n3,R\n"), "offline")).toEqual([-12, 3]);
  });
});

describe("readShots(text, options)", () => {
  it("takes the fitter's word for columns, units, decimal mark and delimiter", () => {
    const table = read("a;b;c\n1,500;2;x\n", {
      columns: { 1: "carry", 2: "offline", 3: "build" },
      units: { 1: "m", 2: "ft" },
      decimal: ".",
      delimiter: ";",
    });
    expect(column(table, "carry")).toEqual([1500 / 0.9144]);
    expect(column(table, "offline")).toEqual([2 / 3]);
    expect(table.build).toEqual(["x"]);
  });

  it("keeps a column as an unknown one when told so", () => {
    const table = read("Carry,Total\n150,160\n", { columns: { 2: null } });
    expect([...table.values.keys()]).toEqual(["carry"]);
    expect(table.extras).toEqual([{ header: "Total", cells: ["160"] }]);
  });

  it("reads a table without a header once its columns are named", () => {
    const table = read("150,3\n151,-2\n", { columns: { 1: "carry", 2: "offline" } });
    expect(column(table, "offline")).toEqual([3, -2]);
  });
});

describe("readShots(text) for any text", () => {
  const word = fc.constantFrom(
    ..."Carry|Total|Spin|Build|Shot|Keep|Average|95 g|Mean Machine|150|2,450|12.3 L|R4|-|n/a|x|yd|(mph)|0||  ".split(
      "|",
    ),
    "__proto__",
    "=1+1",
    "Shaft: A",
    "left 3",
    "\u2212 4,5",
    "Offline (yd)",
  );
  const line = fc.tuple(fc.array(word, { maxLength: 6 }), fc.constantFrom(",", ";", "\t", "|"));
  const table = fc
    .tuple(fc.array(line, { maxLength: 12 }), fc.constantFrom("\n", "\r\n", "\r"), fc.boolean())
    .map(([lines, end, header]) => {
      const rows = lines.map(([words, delimiter]) => words.join(delimiter));
      return (header ? ["Build,Carry,Offline", ...rows] : rows).join(end);
    });

  it("never throws, and keeps every figure finite or missing", () => {
    fc.assert(
      fc.property(fc.oneof(table, fc.string({ unit: "binary", maxLength: 200 })), (text) => {
        const outcome = readShots(text);
        if (isProblem(outcome)) return;
        for (const values of outcome.values.values()) {
          expect(values.length).toBe(outcome.size);
          expect(values.includes(Number.POSITIVE_INFINITY)).toBe(false);
        }
        for (const list of [outcome.build, outcome.keep, outcome.club, outcome.shot, outcome.time]) {
          expect(list.length).toBe(outcome.size);
        }
        for (const { cells } of outcome.extras) expect(cells.length).toBe(outcome.size);
      }),
      { numRuns: 300 },
    );
  }, 60_000);

  it("makes each line a shot or lists it as skipped, once", () => {
    fc.assert(
      fc.property(table, (text) => {
        const outcome = readShots(text);
        if (isProblem(outcome)) return;
        const lines = text.replace(/\r\n?/g, "\n").replace(/\n$/, "").split("\n");
        const told = [...outcome.row, ...outcome.skipped.map(({ row }) => row)].sort((a, b) => a - b);
        expect(told).toEqual(lines.map((_, index) => index + 1));
      }),
      { numRuns: 300 },
    );
  }, 60_000);

  it("leaves every metric cell a figure, a blank or a problem", () => {
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 10 }), (cells) => {
        const outcome = readShots(
          `Shot\tCarry\tOffline\n${cells.map((cell, at) => `${at}\t150\t${cell}`).join("\n")}`,
        );
        if (isProblem(outcome)) return;
        outcome.row.forEach((row, shot) => {
          const cell = cells[row - 2]!;
          const missing = Number.isNaN(outcome.values.get("offline")![shot]!);
          const listed = outcome.problems.some((problem) => problem.row === row && problem.column === 3);
          const blank = ["", "-", "n/a"].includes(cell.trim());
          expect(missing ? blank || listed : !blank).toBe(true);
        });
      }),
    );
  });
});

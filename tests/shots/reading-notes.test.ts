import { describe, expect, it } from "vitest";
import type { ReadOptions } from "../../src/shots/read-options.ts";
import { readShots } from "../../src/shots/read-shots.ts";
import type { ShotTable } from "../../src/shots/shot-table.ts";

/** Notes apart from the one on builds, which `assign-builds.test.ts` holds. */
const notes = (text: string, options: ReadOptions = {}) =>
  (readShots(text, options) as ShotTable).notes.filter((note) => !note.startsWith("Builds were taken"));

/** Whether each note says what was expected of it, and none says anything else. */
function expectNotes(text: string, wanted: readonly RegExp[], options: ReadOptions = {}): void {
  const found = notes(text, options);
  expect(found).toHaveLength(wanted.length);
  wanted.forEach((pattern, at) => {
    expect(found[at]).toMatch(pattern);
  });
}

const POINT = /parted by comma; .*is a point\.$/;

describe("readingNotes(text, delimiter, shots, options)", () => {
  it("says how cells are parted and what the decimal mark is, and no more of a plain table", () => {
    expectNotes("Build,Carry,Offline\nA,150.5,1.5\nA,151.5,2.5", [POINT]);
    expectNotes("Build;Carry;Offline\nA;150,5;1,5\nA;151,5;2,5", [/parted by semicolon; .*is a comma\.$/]);
  });

  it("says that a quotation mark is left open, and only then", () => {
    expectNotes('Build,Carry\n"A,150.5\nA,151.5', [POINT, /quotation mark is not closed/]);
    expectNotes('Build,Carry\n"A",150.5\nA,151.5', [POINT]);
  });

  it("names the column that has another decimal mark than the rest", () => {
    const comma = ["A;150,5;2,450", "A;151,5;2,512", "A;152,5;2,480"];
    expectNotes(["Build;Carry;Spin", ...comma].join("\n"), [
      /is a comma\.$/,
      /^Spin was read with a decimal point/,
    ]);
    const point = ["A;150.5;16,234", "A;151.5;15,122", "A;152.5;16,480"];
    expectNotes(["Build;Carry;Launch", ...point].join("\n"), [
      /is a point\.$/,
      /^Launch was read with a decimal comma/,
    ]);
  });

  it("counts figures that were read by the other mark", () => {
    const rows = ["A;150.5;2.5;1.35", "A;151.5;3.5;1,36", "A;152.5;4.5;1.37", "A;153.5;1.5;1.38"];
    expectNotes(["Build;Carry;Offline;Smash", ...rows].join("\n"), [
      /is a point\.$/,
      /other decimal mark.*: 1\.$/,
    ]);
  });

  it("names the column, with its heading or its place, that counts left as positive", () => {
    expectNotes("Build,Carry,Offline (L+)\nA,150.5,1.5", [POINT, /^Offline \(L\+\) counts left as positive/]);
  });

  it("says that clubs are no builds, only where a table has clubs and no builds", () => {
    expectNotes("Club,Carry\n7i,150.5\n7i,151.5", [
      POINT,
      /names clubs but no builds.* name it Build\.$/,
      /without a build/,
    ]);
    expectNotes("Club,Build,Carry\n7i,A,150.5", [POINT]);
    expectNotes("Carry,Spin\n150.5,6000", [POINT, /without a build/]);
  });

  it("says that nothing is mirrored for a left-handed player", () => {
    expectNotes("Build,Carry\nA,150.5", [POINT, /^Left-handed player/], { leftHanded: true });
  });
});

describe("a note on units", () => {
  const unstated = (header: string) => notes(`Build,${header}\nA,150.5,30.5`).slice(1);

  it("points at the column without a unit beside one of its kind that states another", () => {
    expect(unstated("Carry [m],Height")).toEqual([
      expect.stringMatching(/^Height .*in ft, though Carry \[m\] is in m\.$/),
    ]);
    expect(unstated("Ball speed,Club speed (km/h)")).toEqual([
      expect.stringMatching(/^Ball speed .* in mph/),
    ]);
  });

  it("is left out where units are stated, agree, are of another kind, or nobody states one", () => {
    for (const header of [
      "Carry [m],Height [m]",
      "Carry [yd],Total",
      "Carry,Height",
      "Carry,Club speed (km/h)",
    ])
      expect(unstated(header)).toEqual([]);
    expect(unstated("Carry [m],Smash")).toEqual([]);
  });

  it("is left out for the strike on the face, on either side", () => {
    expect(unstated("Carry [m],Strike X")).toEqual([]);
    expect(unstated("Carry [m],Strike Y")).toEqual([]);
    expect(unstated("Carry,Strike X [in]")).toEqual([]);
    expect(unstated("Carry,Strike Y [in]")).toEqual([]);
  });
});

describe("a note on columns that were not recognised", () => {
  const said = (headings: string) =>
    notes(`Carry,${headings}\n150.5,${headings}`).find((note) => /^Not rec/.test(note));

  it("names twelve, and counts the rest", () => {
    const words = Array.from({ length: 13 }, (_, place) => `Word${place}`);
    expect(said(words.slice(0, 12).join())).toMatch(/"Word11"\.$/);
    expect(said(words.join())).toMatch(/"Word11" and 1 more\.$/);
  });

  it("cuts off a heading of more than 40 letters", () => {
    expect(said("x".repeat(40))).toContain(`"${"x".repeat(40)}"`);
    expect(said("x".repeat(41))).toContain(`"${"x".repeat(39)}…"`);
  });

  it("names a heading once, though the table is headed twice", () => {
    const text = "Carry,Lust\n150,3\n\nCarry,Lust,Spin\n151,4,6000";
    expect(notes(text).filter((note) => /^Not rec/.test(note))).toEqual([
      expect.stringMatching(/: "Lust"\.$/),
    ]);
  });
});

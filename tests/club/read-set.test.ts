import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planSet } from "../../src/club/plan-set.ts";
import { readSetFile } from "../../src/club/read-set.ts";
import { setFileNumber } from "../../src/club/set-file-number.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { answer, refusal } from "./answer.ts";

const file = `# kept by the workshop
set; Harrow Lane irons
target; swingweight; D2; 0.5; 7
shafts; 108; 3; 7
grip; 50; 10.63; 5.3
ferrule; 2
epoxy; 1.5
tip; parallel
tip trims; 0.5; 0.5; 6
balance share; 0.49
most tip trim; 3
most butt trim; 4
least cut length; 34
bend limit; 2
tape; 1; 6
tolerance; length; 0.0625
tolerance; swingweight; 0.5
bin; 107.2; 108.9
bin; 110.4

Club; Length (in); Loft; Lie; Head weight; Head loft; Bounce; Raw length; Tip-trim; Carry; Putter
6; 37 1/2; 29; 61.5; 255; 30; 4; 41; 1; 175;
7; 37; 33; 62; 262; ; ; 41; 1; 165; no
`;

describe("readSetFile(text)", () => {
  const set = answer(readSetFile(file));

  test("reads every line of the set", () => {
    expect(set).toMatchObject({
      name: "Harrow Lane irons",
      target: { kind: "swingweight", code: "D2", step: 0.5, reference: "7" },
      shafts: { kind: "steps", weight: 108, step: 3, reference: "7" },
      grip: { weight: 50, length: 10.63, balance: 5.3 },
      ferrule: 2,
      epoxy: 1.5,
      shaftBlank: { tipKind: "parallel", balanceShare: 0.49, limits: { tip: 3, butt: 4, cutLength: 34 } },
      tipTrims: { tip: 0.5, step: 0.5, reference: "6" },
      bendLimit: 2,
      tape: { up: 1, most: 6 },
      tolerances: { length: 0.0625, swingweight: 0.5 },
      bin: [107.2, 108.9, 110.4],
    });
  });

  test("reads a club a row and leaves blank cells out", () => {
    expect(set.clubs).toEqual([
      {
        club: "6",
        length: 37.5,
        loft: 29,
        lie: 61.5,
        head: 255,
        headLoft: 30,
        bounce: 4,
        rawLength: 41,
        tipTrim: 1,
        carry: 175,
      },
      { club: "7", length: 37, loft: 33, lie: 62, head: 262, rawLength: 41, tipTrim: 1, carry: 165 },
    ]);
  });

  test("makes a set that can be planned", () => {
    expect(answer(planSet(set)).clubs.map((club) => club.built.swingweight)).toEqual(["D1.5", "D2.0"]);
  });

  test.each([
    ["tabs", "\t"],
    ["commas", ","],
    ["bars", "|"],
  ])("reads the same from %s", (_, delimiter) => {
    expect(
      readSetFile(
        `\uFEFF${file.replaceAll("; ", delimiter).replaceAll(";", delimiter).replaceAll("\n", "\r\n")}`,
      ),
    ).toEqual(set);
  });

  test("reads decimal commas where commas separate nothing", () => {
    expect(readSetFile(file.replaceAll(".", ","))).toEqual(set);
  });

  test("reads the other targets, a list of weights, and clubs that bring their own", () => {
    const table = "grip; 50\nclub; length; swingweight; shaft\n9; 36; D3; 110\n";
    expect(readSetFile(table)).toMatchObject({
      target: { kind: "swingweight", code: "D3" },
      shafts: { kind: "list", weights: [110] },
    });
    expect(readSetFile(`target; inertia; 2750\n${table}`)).toMatchObject({
      target: { kind: "inertia", inertia: 2750 },
    });
    expect(readSetFile(`target; inertia of; 9; D2\nshafts; list; 101; 102\n${table}`)).toMatchObject({
      target: { kind: "inertia of", reference: "9", code: "D2" },
      shafts: { kind: "list", weights: [101, 102] },
    });
  });

  test.each([
    ["", "no row of headings"],
    ["hello", "no row of headings"],
    ["colour; red\nclub; length\n7; 37", 'Line 1: "colour" is no line of a set'],
    ["grip; heavy\nclub; length\n7; 37", 'Line 1: grip is "heavy"'],
    ["grip\nclub; length\n7; 37", "Line 1: grip has no figure"],
    ["grip; 50; ; 5\nclub; length\n7; 37", 'Line 1: grip is ""'],
    ["target; swingweight; D2; much\nclub; length\n7; 37", 'Line 1: target step is "much"'],
    ["target; inertia; much\nclub; length\n7; 37", 'Line 1: target inertia is "much"'],
    ["target;  weight ; 4\nclub; length\n7; 37", 'Line 1: target is "weight"'],
    ["shafts; list; much\nclub; length\n7; 37", 'Line 1: shafts is "much"'],
    ["shafts; much\nclub; length\n7; 37", 'Line 1: shafts is "much"'],
    ["tip trims; much\nclub; length\n7; 37", 'Line 1: tip trims is "much"'],
    ["tolerance; loft; much\nclub; length\n7; 37", 'Line 1: tolerance loft is "much"'],
    ["tolerance;  colour ; 2\nclub; length\n7; 37", 'tolerance is of "colour"'],
    ["tip;  round \nclub; length\n7; 37", 'tip is "round"'],
    ["club; length;  hue \n7; 37; red", '"hue" is no column'],
    ["club; length; \n7; 37; 5", '"5" stands under no heading'],
    ["club; length; putter\n7; 37; yesterday", 'putter is "yesterday"'],
    ["club; length; putter\n7; 37; box", 'putter is "box"'],
    ["target; D2\nclub; length\n7; 37", "Line 1: target is"],
    ["target; swingweight; Z9\nclub; length\n7; 37", 'Line 1: swingweight "Z9"'],
    ["\ntolerance; colour; 2\nclub; length\n7; 37", "Line 2: tolerance is of"],
    ["tolerance; loft; -2\nclub; length\n7; 37", "Line 1: tolerance loft is -2"],
    ["tip; round\nclub; length\n7; 37", "Line 1: tip is"],
    ["club; loft\n7; 37", 'Line 1: The table has no "length"'],
    ["club; length; colour\n7; 37; red", 'Line 1: "colour" is no column'],
    ["tape; 1\nclub; length\n7; 37", "Line 1: tape has 1 alone; it should have two figures"],
    ["balance share; 49\nclub; length\n7; 37", "Line 1: balance share is 49; it should be between 0 and 1"],
    ["balance share; 0\nclub; length\n7; 37", "Line 1: balance share is 0;"],
    ["balance share; 1\nclub; length\n7; 37", "Line 1: balance share is 1;"],
    ["balance share; half\nclub; length\n7; 37", 'Line 1: balance share is "half"'],
    ["tape; much; 6\nclub; length\n7; 37", 'Line 1: tape is "much"'],
    ["club; length; length\n7; 37; 37", "Line 1: "],
    ["club; length\n7; long", 'Line 2: length is "long"'],
    ["club; length\n7", "Line 2: Club 7 has no length"],
    ["club; length\n; 37", "Line 2: A club has no label"],
    ["club; length\n7; 37; 38", "Line 2: "],
    ["club; length; putter\n7; 37; perhaps", "Line 2: putter"],
    ["club; length\n", "no clubs"],
    ["club; length\n7; 37", "no grip"],
    ["grip; 50\nclub; length\n7; 37", "no target"],
    ["grip; 50\ntarget; swingweight; D2\nclub; length\n7; 37", "no shaft weights"],
  ])("refuses %j", (text, message) => {
    expect(refusal(readSetFile(text))).toContain(message);
  });

  const least = "grip; 50\ntarget; swingweight; D2\nshafts; 108\n";

  test.each(["yes", "Y", "x", "TRUE"])("takes %s in the putter column for a putter", (cell) => {
    expect(answer(readSetFile(`${least}club; length; putter\n1; 34; ${cell}`)).clubs[0]!.putter).toBe(true);
  });

  test.each(["no", "N", "false", ""])("takes %j in the putter column for none", (cell) => {
    expect(answer(readSetFile(`${least}club; length; putter\n1; 34; ${cell}`)).clubs[0]).toEqual({
      club: "1",
      length: 34,
    });
  });

  test("refuses a line or a club that stands twice, and says where it stood before", () => {
    expect(refusal(readSetFile(`${least}Grip; 45\nclub; length\n7; 37`))).toBe(
      'Line 4: "grip" stands in line 1 already; it should stand once.',
    );
    expect(refusal(readSetFile(`${least}club; length\npw; 35\n\nPW; 35`))).toBe(
      'Line 7: club "PW" stands in line 5 already; it should stand once.',
    );
    const loft = "tolerance; loft; 1\n";
    expect(refusal(readSetFile(`${loft}${loft}${least}club; length\n7; 37`))).toContain("Line 2: ");
    expect(
      answer(readSetFile(`${loft}tolerance; lie; 1\nbin; 1\nbin; 2\n${least}club; length\n7; 37`)),
    ).toMatchObject({ tolerances: { loft: 1, lie: 1 }, bin: [1, 2] });
  });

  test("says which line starts from a club that the table has not", () => {
    const set = (lines: string) => refusal(readSetFile(`grip; 50\n${lines}\nclub; length\n7; 37\nPW; 35`));
    const says = (line: string) => `${line} starts from club "5"; it should be one of the table: 7, PW.`;
    const [target, shafts] = ["target; swingweight; D2; 0; pw", "shafts; 108; 3; 7"];
    expect(set(`${target}\nshafts; 108; 3; 5`)).toBe(says("shafts"));
    expect(set(`target; swingweight; D2; 0.5; 5\n${shafts}`)).toBe(says("target"));
    expect(set(`target; inertia of; 5; D2\n${shafts}`)).toBe(says("target"));
    expect(set(`${target}\n${shafts}\ntip trims; 1; 0.5; 5`)).toBe(says("tip trims"));
  });

  test("does not take a line about the whole set for a club where it stands below the table", () => {
    expect(refusal(readSetFile(`${least}club; length\n7; 37\nTape; 1; 6`))).toBe(
      'Line 6: "tape" is about the whole set; it should stand above the row of headings.',
    );
  });

  test("says of a line that is parted otherwise than the table how it should be", () => {
    expect(refusal(readSetFile("grip; 50\nclub\tlength\n7\t37"))).toBe(
      'Line 1: "grip; 50" is one cell; it should be parted by tabs, as the row of headings is.',
    );
    expect(refusal(readSetFile("hue; 50\nclub\tlength\n7\t37"))).toContain("is no line of a set");
    expect(refusal(readSetFile("hue\nclub\tlength\n7\t37"))).toContain("is no line of a set");
  });

  test.each([
    ["", "Length (cm)", "headed in cm; it should be in, or a line"],
    ["", "Raw length [centimetres]", "headed in cm; it should be in, or a line"],
    ["lengths; cm\n", "Bore (inches)", "headed in in; it should be cm, as the line"],
    ["", "Tip trim (mm)", "headed in mm"],
    ["", "Head (oz)", "headed in oz; it should be g."],
    ["lengths; cm\n", "Shaft weight (lb)", "headed in lb; it should be g."],
    ["", "Loft (in)", "headed in in; it should be degrees."],
  ])("refuses, below %j, the heading %j, which tells another unit than is read", (above, heading, says) => {
    expect(refusal(readSetFile(`${above}club; ${heading}; length\n7; 1; 37`))).toContain(says);
  });

  test("takes a heading that tells the right unit, or none, or whose unit is free", () => {
    const headings =
      'club; Length (in); Raw length ("); Head (g); Loft [deg]; Lie (degrees); Bounce (low); Carry (m)';
    const [club] = answer(readSetFile(`${least}${headings}\n7; 37; 41; 260; 33; 62; 6; 150`)).clubs;
    expect(club).toEqual({
      club: "7",
      length: 37,
      rawLength: 41,
      head: 260,
      loft: 33,
      lie: 62,
      bounce: 6,
      carry: 150,
    });
    const centimetres = `lengths; cm\n${least}club; Length (cm)\n7; 94`;
    // By arithmetic: 94 cm over 2.54 cm an inch.
    expect(answer(readSetFile(centimetres)).clubs[0]!.length).toBeCloseTo(37.0079, 4);
  });

  test("reads headings however they are spaced, and passes over a column without one", () => {
    expect(answer(readSetFile(`${least}Club; ; Length [in] cut; Tip _ trim\n7; ; 37; 1`)).clubs).toEqual([
      { club: "7", length: 37, tipTrim: 1 },
    ]);
  });

  test("takes a tolerance of 0, and words between blanks", () => {
    const more = "tolerance;  Loft ; 0\ntip;  Taper \n";
    expect(answer(readSetFile(`${least}${more}club; length\n7; 37`))).toMatchObject({
      tolerances: { loft: 0 },
      shaftBlank: { tipKind: "taper" },
    });
  });

  test("takes the first club's swingweight for the set's only where every club has one", () => {
    const some = (rows: string) => readSetFile(`grip; 50\nshafts; 108\nclub; length; swingweight\n${rows}`);
    expect(answer(some("7; 37; D3\n8; 36.5; D4")).target).toEqual({ kind: "swingweight", code: "D3" });
    expect(refusal(some("7; 37; D3\n8; 36.5; "))).toContain("no target");
    expect(refusal(some("7; 37; \n8; 36.5; D4"))).toContain("no target");
  });

  test("never throws, whatever it is given", () => {
    const words = fc.constantFrom(
      "club",
      "length",
      "grip",
      "target",
      "shafts",
      "__proto__",
      "7",
      "-",
      "D2",
      ";",
      "\n",
      '"',
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 40 }), (pieces) => {
        const read = readSetFile(pieces.join(""));
        expect(isProblem(read) || read.clubs.length > 0).toBe(true);
      }),
    );
  });
});

describe("setFileNumber(name, cell)", () => {
  test.each([
    ["38.5", 38.5],
    ["38,5", 38.5],
    ["38 1/2", 38.5],
    ["-1 1/4", -1.25],
    [' 37" ', 37],
    ["62°", 62],
    [".5", 0.5],
    ["1/2", 0.5],
    ["38-1/2", 38.5],
    ["37½", 37.5],
    ["37 ¾”", 37.75],
    ["⅜", 0.375],
    ["37 17/32", 37.53125],
    ["-.25", -0.25],
    ["+,125", 0.125],
    ["35  15/16", 35.9375],
    ["1 10/32", 1.3125],
  ])("reads %j as %d", (cell, figure) => {
    expect(setFileNumber("length", cell)).toBe(figure);
  });

  test.each([
    "",
    "1e5",
    "38 1/0",
    "1.2.3",
    "four",
    "Infinity",
    "381/2/3",
    "1.5 1/2",
    "½½",
    "x.5",
    "7 1/2x",
    "1 1/x",
  ])("refuses %j", (cell) => {
    expect(refusal(setFileNumber("length", cell))).toMatch(/^length is/);
  });

  test("says of a figure with its unit behind it that it should stand alone", () => {
    expect(refusal(setFileNumber("head", "268 g"))).toBe(
      'head is "268 g"; it should be a number alone, without its unit.',
    );
    expect(refusal(setFileNumber("head", "heavy"))).toBe('head is "heavy"; it should be a number.');
  });
});

describe("readSetFile(text) takes a table as spreadsheets write it", () => {
  const above = "grip; 50\ntarget; swingweight; D2\nshafts; 108; 3; 7\n";

  test("blanks round headings and cells, units in brackets, and a row with a blank at its end", () => {
    const found = answer(
      readSetFile(
        `${above} Club ; Length (in) \n of the club ; Putter;\n 7 ; 37 ; no;\n P ; 35 ; X;`.replace(
          " \n of the club",
          "",
        ),
      ),
    );
    expect(found.clubs).toEqual([
      { club: "7", length: 37 },
      { club: "P", length: 35, putter: true },
    ]);
  });

  test("a putter is yes, y, x or true, in any case, and nothing that only holds one of them", () => {
    const putter = (cell: string) => readSetFile(`${above}club;length;putter\n7;37;${cell}`);
    for (const cell of ["yes", "Y", "x", "TRUE"])
      expect(answer(putter(cell)).clubs[0]).toEqual({ club: "7", length: 37, putter: true });
    for (const cell of ["no", "N", "false", ""])
      expect(answer(putter(cell)).clubs[0]).toEqual({ club: "7", length: 37 });
    for (const cell of ["yesterday", "oy", "not x"]) expect(refusal(putter(cell))).toContain("yes or no");
  });

  test("a step that is left blank between others is none", () => {
    const text = above.replace("108; 3; 7", "108;  ; 7");
    expect(answer(readSetFile(`${text}club;length\n7;37`)).shafts).toEqual({
      ...{ kind: "steps", weight: 108, step: 0, reference: "7" },
    });
  });

  test("a heading that every object knows is no column of a set all the same", () => {
    expect(refusal(readSetFile(`${above}club;length;constructor\n7;37;1`))).toContain(
      '"constructor" is no column',
    );
  });

  test("a club that is not in the first column of any line is no heading", () => {
    expect(refusal(readSetFile("set; my club; length\n7; 37"))).toContain("no row of headings");
  });

  test("blank cells behind the figures of a line count for nothing, and one between them is no number", () => {
    const bin = (cells: string) => readSetFile(`${above}bin; ${cells}\nclub;length\n7;37`);
    expect(answer(bin("103; 107.5; ; ")).bin).toEqual([103, 107.5]);
    expect(refusal(bin("103; ; 107.5"))).toContain("Line 4: bin");
  });
});

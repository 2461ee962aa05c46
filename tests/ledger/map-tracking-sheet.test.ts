import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Table } from "../../src/ledger/cell.ts";
import {
  type MappedSheet,
  mapTrackingSheet,
  type TrackingOptions,
} from "../../src/ledger/map-tracking-sheet.ts";
import { mergeRows } from "../../src/ledger/merge-rows.ts";
import { LEDGER } from "../../src/ledger/schema.ts";
import { rowsOf } from "../../src/ledger/table-rows.ts";
import { answer } from "./demo-rows.ts";

const sheet = (name: string) => readFileSync(new URL(`sheets/${name}.txt`, import.meta.url), "utf8");
const mapped = (name: string, options?: TrackingOptions) => answer(mapTrackingSheet(sheet(name), options));

/** The facts of each row that are not empty and not made from others, as the by-hand lists below have them. */
const facts = ({ rows }: MappedSheet) =>
  rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).filter(
        ([key, cell]) =>
          cell !== null && !/^(schema|entry|session|source|kind|profile)$/.test(key) && !/N$/.test(key),
      ),
    ),
  );

const close = (value: number) => expect.closeTo(value, 9);

// The lists were written by hand from the sheets. Yard 0.9144 m, mile 1.609344 km, inch 2.54 cm, ounce 28.349523125 g
// (international definitions of 1959).
describe("a tracking sheet of the shop's own", () => {
  test("with a line a build comes in figure by figure", () => {
    const found = mapped("one-line-a-build");
    expect(facts(found)).toEqual([
      {
        date: "2026-03-14",
        player: "Tess Marlow",
        club: "7 iron",
        build: "85 g mid",
        shaftWeight: 85,
        kept: 8,
        shots: 8,
        clubSpeedMean: 78.4,
        ballSpeedMean: 107.2,
        launchMean: 18.6,
        spinMean: 5840,
        carryMean: 146.5,
        carrySd: 4.8,
        offlineMean: -2.1,
        verdict: "clear",
        ordered: "85 g mid",
        note: "Invoice: HL-101",
      },
      {
        date: "2026-03-14",
        player: "Tess Marlow",
        club: "7 iron",
        build: "95 g low",
        shaftWeight: 95,
        kept: 8,
        shots: 8,
        clubSpeedMean: 77.9,
        ballSpeedMean: 106.1,
        launchMean: 17.2,
        spinMean: 5630,
        carryMean: 144,
        carrySd: 5.6,
        offlineMean: 3.4,
        verdict: "clear",
      },
      {
        date: "2026-04-02",
        player: "Ivo Brandt",
        club: "Driver",
        build: "60 g low",
        shaftWeight: 60,
        kept: 7,
        shots: 7,
        clubSpeedMean: 104.2,
        ballSpeedMean: 152.8,
        launchMean: 12.1,
        spinMean: 2480,
        carryMean: 248.3,
        carrySd: 9.1,
        offlineMean: 6,
        verdict: "leaning",
        note: "Invoice: HL-108",
      },
      {
        date: "2026-04-02",
        player: "Ivo Brandt",
        club: "Driver",
        build: "70 g mid",
        shaftWeight: 70,
        kept: 6,
        shots: 6,
        clubSpeedMean: 103.6,
        ballSpeedMean: 152.9,
        launchMean: 11.4,
        spinMean: 2390,
        carryMean: 251.1,
        carrySd: 8.2,
        offlineMean: -1.5,
        verdict: "leaning",
        ordered: "70 g mid",
        note: "Invoice: HL-108",
      },
    ]);
    expect(found.left.map(({ line, why }) => [line, why])).toEqual(
      [
        [0, "not a column of the ledger; its cells went into Note"],
        [7, "a total or an average of other lines"],
        [6, "a line with one cell that names neither a player nor a day"],
      ].sort((a, b) => Number(a[0]) - Number(b[0])),
    );
    expect(found.questions).toEqual([]);
  });

  test("with titles, a row of units, cells merged downwards and decimal commas comes in figure by figure", () => {
    const found = mapped("titles-and-units-below");
    expect(facts(found)).toEqual([
      {
        date: "2026-03-05",
        player: "Jana Weiß",
        club: "Eisen 7",
        build: "75 g hoch",
        shaftWeight: 75,
        kept: 6,
        shots: 6,
        clubSpeedMean: close(118.5 / 1.609344),
        ballSpeedMean: close(164.2 / 1.609344),
        carryMean: close(121.4 / 0.9144),
        note: "ruhiger Treffpunkt",
      },
      {
        date: "2026-03-05",
        player: "Jana Weiß",
        club: "Eisen 7",
        build: "85 g mittel",
        shaftWeight: 85,
        kept: 6,
        shots: 6,
        clubSpeedMean: close(117.9 / 1.609344),
        ballSpeedMean: close(163 / 1.609344),
        carryMean: close(120.1 / 0.9144),
      },
      {
        date: "2026-03-12",
        player: "Otto Kern",
        club: "Eisen 7",
        build: "105 g tief",
        shaftWeight: 105,
        kept: 5,
        shots: 7,
        clubSpeedMean: close(139.2 / 1.609344),
        ballSpeedMean: close(190.4 / 1.609344),
        carryMean: close(146.8 / 0.9144),
      },
      {
        date: "2026-03-12",
        player: "Otto Kern",
        club: "Eisen 7",
        build: "115 g tief",
        shaftWeight: 115,
        kept: 6,
        shots: 6,
        ballSpeedMean: close(191.6 / 1.609344),
        carryMean: close(148.2 / 0.9144),
        note: "bestellt",
      },
    ]);
    expect(found.left.map(({ cell }) => cell)).toEqual([
      "Harrow Lane Werkstatt - Schaftprotokoll 2026",
      "(nur intern)",
      "Durchschnitt | 125,2 | 177,3 | 134,1",
    ]);
  });

  test("with means and spreads under merged headings comes in figure by figure", () => {
    const found = mapped("means-over-spreads");
    expect(facts(found)).toEqual([
      {
        date: "2026-01-09",
        player: "Pella Thorne",
        club: "6i",
        build: "95 g stiff",
        shaftWeight: 95,
        carryMean: 168.2,
        carrySd: 6.1,
        spinMean: 5410,
        spinSd: 310,
        kept: 10,
        shots: 10,
        chosen: true,
      },
      {
        date: "2026-01-09",
        player: "Pella Thorne",
        club: "6i",
        build: "105 g stiff",
        shaftWeight: 105,
        carryMean: 166.9,
        carrySd: 4.4,
        spinMean: 5290,
        spinSd: 280,
        kept: 9,
        shots: 9,
      },
      {
        date: "2026-01-22",
        player: "Abel Nook",
        club: "PW",
        build: "110 g low",
        shaftWeight: 110,
        carryMean: 118.4,
        carrySd: 3.3,
        spinMean: 8120,
        spinSd: 410,
        kept: 8,
        shots: 8,
        chosen: true,
      },
      {
        date: "2026-01-22",
        player: "Abel Nook",
        club: "PW",
        build: "120 g low",
        shaftWeight: 120,
        carryMean: 117,
        carrySd: 3.9,
        spinMean: 7980,
        spinSd: 520,
        kept: 8,
        shots: 8,
      },
    ]);
    expect(found.left).toEqual([]);
  });

  test("with several builds side by side becomes a row for each", () => {
    const found = mapped("builds-side-by-side");
    const line =
      (player: string, date: string, club: string) =>
      (build: string, shaftWeight: number, carryMean: number, offlineMean: number) => ({
        player,
        date,
        club,
        build,
        shaftWeight,
        carryMean,
        offlineMean,
      });
    const [mira, sven, una] = [
      line("Mira Holt", "2026-03-14", "Driver"),
      line("Sven Aldous", "2026-04-02", "5W"),
      line("Una Frey", "2026-03-30", "Driver"),
    ];
    expect(facts(found)).toEqual([
      mira("blue soft", 55, 205, 4),
      mira("red firm", 65, 209, -2),
      sven("blue soft", 60, 214, 0),
      sven("green", 70, 216.5, 3),
      sven("red firm", 80, 211, -9),
      una("red firm", 65, 188, -12),
      una("green", 50, 193, -5),
    ]);
    expect(found.preview.map(({ line, rows }) => [line, rows.length])).toEqual([
      [2, 2],
      [3, 3],
      [4, 2],
    ]);
    expect(found.left).toEqual([]);
  });

  test("with players between the lines and units in the cells comes in figure by figure", () => {
    const found = mapped("players-between-lines");
    expect(facts(found)).toEqual([
      {
        player: "Cora Lindqvist",
        date: "2026-02-27",
        build: "85 mid",
        shaftWeight: 85,
        length: 36.75,
        carryMean: close(142 / 0.9144),
        carrySd: close(4 / 0.9144),
        ballSpeedMean: close((47.8 * 3.6) / 1.609344),
        launchMean: 19.1,
        kept: 6,
        shots: 7,
        verdict: "too close to call",
      },
      {
        player: "Cora Lindqvist",
        date: "2026-02-27",
        build: "95 mid",
        shaftWeight: close(3.35 * 28.349523125),
        length: close(93.5 / 2.54),
        carryMean: 155.9,
        carrySd: 5.2,
        ballSpeedMean: 107,
        launchMean: 18.4,
        kept: 6,
        shots: 6,
        verdict: "too close to call",
      },
      {
        player: "Dario Penn",
        date: "2026-03-03",
        build: "120 low",
        shaftWeight: 120,
        length: 37,
        carryMean: 172,
        carrySd: 6,
        ballSpeedMean: 121.5,
        launchMean: 16.2,
        kept: 8,
        shots: 8,
        verdict: "clear",
      },
      {
        player: "Dario Penn",
        date: "2026-03-03",
        build: "110 mid",
        shaftWeight: 110,
        length: 37,
        carryMean: 168,
        carrySd: 7,
        ballSpeedMean: 120.9,
        launchMean: 16.9,
        kept: 8,
        shots: 8,
        verdict: "clear",
      },
    ]);
    expect(found.left.map(({ line, cell }) => [line, cell])).toEqual([
      [1, "FITTING BOOK - BAY 2"],
      [11, "broken cable, see notes"],
    ]);
  });

  test("with days that do not tell their order asks, and fills them in when told", () => {
    const open = mapped("days-that-do-not-tell");
    expect(open.questions).toEqual([expect.stringContaining('"03/04/2026"')]);
    expect(open.rows.map(({ date }) => date ?? null)).toEqual([null, null, null]);
    const found = mapped("days-that-do-not-tell", { days: "day first" });
    expect(found.questions).toEqual([]);
    expect(facts(found)).toEqual([
      {
        player: "Marsh, Ellery",
        date: "2026-04-03",
        build: "100 g mid",
        shaftWeight: 100,
        carryMean: 158,
        spinMean: 6120,
        chance: 0.82,
        ordered: "100 g mid",
        note: "likes the feel; How was coffee: good",
      },
      {
        player: "Marsh, Ellery",
        date: "2026-04-03",
        build: "90 g mid",
        shaftWeight: 90,
        carryMean: 155,
        spinMean: 6400,
        chance: 0.18,
      },
      {
        player: "Quill, Bram",
        date: "2026-06-05",
        build: "110 g low",
        shaftWeight: 110,
        spinMean: 5550,
        note: "tbd; How was coffee: cold",
      },
    ]);
    expect(mapped("days-that-do-not-tell", { days: "month first" }).rows[0]!.date).toBe("2026-03-04");
    expect(found.left.map(({ line, cell }) => [line, cell])).toEqual([
      [0, "How was coffee"],
      [4, "Customer | Fitted on | Shaft | Avg Carry | Avg Spin | Chance | Bought | Remarks | How was coffee"],
      [5, "Avg Carry: far"],
      [6, "Quill, Bram | 05/06/2026 | 161 yds | 5,480 | forgot to note it"],
    ]);
  });

  test("brought in twice adds nothing the second time", () => {
    const names = [
      "one-line-a-build",
      "titles-and-units-below",
      "means-over-spreads",
      "builds-side-by-side",
      "players-between-lines",
      "days-that-do-not-tell",
    ];
    let table = {
      headings: [] as readonly string[],
      rows: [] as readonly (readonly (string | number | boolean | null)[])[],
    };
    for (const name of [...names, ...names])
      table = mergeRows(table, mapped(name, { source: name, days: "day first" }).rows, LEDGER).table;
    expect(rowsOf(table, LEDGER)).toHaveLength(4 + 4 + 4 + 7 + 4 + 3);
  });

  test("that has no headings a ledger knows is refused in a sentence", () => {
    expect(mapTrackingSheet("milk,eggs\n1,2")).toMatchObject({ kind: "invalid" });
  });
});

describe("a tracking sheet brought in again after it was edited", () => {
  const LINES = [
    "Date,Player,Club,Build,Carry (yd),Verdict,Note",
    "2026-03-14,Tess Marlow,7 iron,85 g mid,146.5,clear,",
    "2026-03-14,Tess Marlow,7 iron,95 g low,144,clear,windy",
    "2026-03-14,Tess Marlow,7 iron,95 g low,143,clear,second try",
  ];
  const merged = (table: Table, lines: readonly string[]) =>
    mergeRows(table, answer(mapTrackingSheet(lines.join("\n"))).rows, LEDGER);
  const NONE: Table = { headings: [], rows: [] };
  const edit = (line: number, from: string, to: string) =>
    LINES.map((text, i) => (i === line ? text.replace(from, to) : text));

  test("has a changed figure, verdict or note put right in its row", () => {
    const { table } = merged(NONE, LINES);
    for (const [from, to] of [
      ["144", "149.5"],
      ["clear", "leaning"],
      ["windy", "no wind"],
    ] as const) {
      const again = merged(table, edit(2, from, to));
      expect(again, from).toMatchObject({ added: 0, updated: 1, already: 2 });
    }
    expect(merged(table, edit(1, "Tess Marlow", "tess  MARLOW"))).toMatchObject({ added: 0, updated: 1 });
    const carries = rowsOf(merged(table, edit(2, "144", "149.5")).table, LEDGER).map(
      ({ carryMean }) => carryMean,
    );
    expect(carries).toEqual([146.5, 149.5, 143]);
  });

  test("has a new row where player, day, club or build was changed, as the documents say", () => {
    const { table } = merged(NONE, LINES);
    for (const [from, to] of [
      ["Tess", "Tessa"],
      ["2026-03-14", "2026-03-15"],
      ["7 iron", "6 iron"],
      ["85 g mid", "85 g high"],
    ] as const)
      expect(merged(table, edit(1, from, to)), from).toMatchObject({ added: 1, updated: 0, already: 2 });
  });

  test("leaves what was typed into the ledger where the sheet says nothing", () => {
    const rows = answer(mapTrackingSheet(LINES.join("\n"))).rows;
    const typed = rows.map((row) => ({
      ...row,
      note: row.note ?? "typed by hand",
      ordered: "a set",
      head: "own",
    }));
    const again = merged(mergeRows(NONE, typed, LEDGER).table, LINES);
    expect(again).toMatchObject({ added: 0, updated: 0, already: 3 });
  });
});

describe("a word for the winner or the order beside several builds", () => {
  const HEADINGS = "Player,Shaft 1,Carry 1,Shaft 2,Carry 2,Winner,Ordered";
  const read = (...lines: string[]) => answer(mapTrackingSheet([HEADINGS, ...lines].join("\n")));

  test("counts for the build that it names, and for no other", () => {
    const { rows, left } = read("Ann,blue soft,150,red firm,155,Red,red firm");
    expect(rows.map(({ build, chosen, ordered }) => [build, chosen, ordered])).toEqual([
      ["blue soft", false, undefined],
      ["red firm", true, "red firm"],
    ]);
    expect(left).toEqual([]);
  });

  test("may be the build's place, and is reported where it names none of them", () => {
    const { rows, left } = read(
      "Ann,blue,150,red,155,2,yes",
      "Ben,blue,150,red,155,green,green",
      "Cleo,blue,150,,,x,yes",
    );
    expect(rows.map(({ chosen, ordered }) => [chosen, ordered])).toEqual([
      [false, undefined],
      [true, undefined],
      [undefined, undefined],
      [undefined, undefined],
      [true, "blue"],
    ]);
    expect(left.map(({ line, cell }) => [line, cell])).toEqual([
      [2, "Ordered: yes"],
      [3, "Winner: green"],
      [3, "Ordered: green"],
    ]);
  });

  test("that stands on every line of a player counts on the line of its build", () => {
    const text =
      "Player,Build,Carry,Winner,Ordered\nAnn,blue soft,150,red,Red firm\nAnn,red firm,155,red,Red firm";
    const { rows } = answer(mapTrackingSheet(text));
    expect(rows.map(({ chosen, ordered }) => [chosen, ordered])).toEqual([
      [false, undefined],
      [true, "Red firm"],
    ]);
    const free = answer(mapTrackingSheet("Player,Build,Carry,Ordered\nAnn,blue,150,5-PW with grips")).rows;
    expect(free[0]!.ordered).toBe("5-PW with grips");
  });
});

describe("what a tracking sheet leaves open is named, never guessed in silence", () => {
  const read = (text: string, options?: TrackingOptions) => answer(mapTrackingSheet(text, options));

  test("a figure without a unit, which can be said", () => {
    const german = "Spieler;Schaft;Carry;Ballgeschwindigkeit;Spin\nJana;85 g;121,4;163,5;5600";
    const found = read(german);
    expect(found.assumed).toEqual([
      '"Carry" states no unit; its figures were taken to be in yd.',
      '"Ballgeschwindigkeit" states no unit; its figures were taken to be in mph.',
    ]);
    const metric = read(german, { units: "metric-kmh" });
    expect(metric.rows[0]).toMatchObject({
      carryMean: close(121.4 / 0.9144),
      ballSpeedMean: close(163.5 / 1.609344),
      spinMean: 5600,
    });
    expect(metric.assumed[0]).toContain("in m.");
    expect(read("Player,Build,Carry\nAnn,a,148 m\nBen,b,150 yd").assumed).toEqual([]);
  });

  test("a second column that holds the same, whose cells go into notes", () => {
    const { rows, left } = read("Player,Build,Shaft,Carry (yd),Carry (m)\nAnn,mine,85 g mid,150,137");
    expect(rows[0]).toMatchObject({ build: "mine", carryMean: 150, note: "Shaft: 85 g mid; Carry (m): 137" });
    expect(left.map(({ cell, why }) => [cell, why])).toEqual([
      ["Shaft", 'holds what "Build" does; its cells went into Note'],
      ["Carry (m)", 'holds what "Carry (yd)" does; its cells went into Note'],
    ]);
    const told = read("Player,Build,Shaft,Carry\nAnn,mine,85 g mid,150", { columns: { Shaft: "build" } });
    expect(told.rows[0]).toMatchObject({ build: "85 g mid", note: "Build: mine" });
  });

  test("a column that somebody says holds a figure is read as one", () => {
    const { rows } = read("Player,Build,Verdict,How far (m)\nAnn,a,clear,137", {
      columns: { "How far (m)": "carryMean" },
    });
    expect(rows[0]).toMatchObject({ carryMean: close(137 / 0.9144) });
    expect(mapTrackingSheet("Player,Build,Carry\nAnn,a,1", { columns: { Carry: "nonsense" } })).toMatchObject(
      {
        message: expect.stringContaining('no column "nonsense"'),
      },
    );
  });

  test("years of two digits, of this century or the last", () => {
    const days = (day: string) => read(`Date,Player,Build,Carry\n${day},Ann,a,150`).rows[0]!.date;
    expect(["3/14/98", "3/14/69", "3/14/68", "14 Mar 26"].map(days)).toEqual([
      "1998-03-14",
      "1969-03-14",
      "2068-03-14",
      "2026-03-14",
    ]);
  });

  test("a blank club below another player's", () => {
    const { rows } = read("Player,Club,Build,Carry\nAnn,7 iron,a,150\n,,b,151\nBen,,a,160\nBen,Driver,b,250");
    expect(rows.map(({ player, club }) => [player, club])).toEqual([
      ["Ann", "7 iron"],
      ["Ann", "7 iron"],
      ["Ben", undefined],
      ["Ben", "Driver"],
    ]);
  });

  test("a hand that is neither right nor left", () => {
    const hands = ["RH", "links", "zurdo", "both"];
    const { rows, left } = read(
      `Player,Hand,Build,Carry\n${hands.map((hand) => `Ann,${hand},a,150`).join("\n")}`,
    );
    expect(rows.map(({ hand }) => hand)).toEqual(["right", "left", "left", undefined]);
    expect(left.map(({ cell }) => cell)).toEqual(["Hand: both"]);
  });

  test("and a side that counts left as positive is turned", () => {
    const { rows } = read("Player,Build,Carry,Offline (L+)\nAnn,a,150,4\nBen,b,150,4 R");
    expect(rows.map(({ offlineMean }) => offlineMean)).toEqual([-4, 4]);
  });
});

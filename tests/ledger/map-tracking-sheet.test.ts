import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
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
    expect(open.rows.map(({ date }) => date)).toEqual([null, null, null]);
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

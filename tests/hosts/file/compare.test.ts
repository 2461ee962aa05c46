import { spawn } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { text as readAll } from "node:stream/consumers";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { type ComparisonJson, comparisonJson } from "../../../src/fitting/comparison-json.ts";
import { DEMO_TEXT } from "../../../src/fitting/demo.ts";
import { sessionOf } from "../../../src/fitting/session.ts";
import { type CommandLine, readCommandLine } from "../../../src/hosts/file/command-line.ts";
import { printComparison } from "../../../src/hosts/file/print-comparison.ts";
import { METRICS } from "../../../src/shots/metrics.ts";
import { readShots } from "../../../src/shots/read-shots.ts";
import { answer, refusal } from "../../club/answer.ts";
import { demoSession } from "../../sheets/demo-session.ts";
import { oddSession } from "../../sheets/odd-session.ts";
import { disagreements, figuresOfJson } from "../../sheets/workings-figures.ts";
import { contentsOfXlsx } from "./contents-of-xlsx.ts";

const TOP = fileURLToPath(new URL("../../..", import.meta.url));
const TABLES = new URL("../../shots/tables/", import.meta.url);
const names = readdirSync(TABLES).filter((name) => name.endsWith(".txt"));
const textOf = (name: string) => readFileSync(new URL(name, TABLES), "utf8");
const jsonOf = (text: string) => comparisonJson(sessionOf(answer(readShots(text))));

const folder = mkdtempSync(join(tmpdir(), "compare-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the command as the script in package.json does. */
async function compare(words: readonly string[], input = "") {
  const child = spawn(process.execPath, ["--import", "tsx", "src/hosts/file/compare.ts", ...words], {
    cwd: TOP,
  });
  child.stdin.end(input);
  const ended = new Promise<number | null>((resolve) => child.once("close", resolve));
  const [said, complained, code] = await Promise.all([readAll(child.stdout), readAll(child.stderr), ended]);
  return { said, complained, code };
}

describe("one session in many layouts", () => {
  const first = figuresOfJson(jsonOf(textOf(names[0]!)));

  it("comes in at least eight of them: each delimiter, both decimal marks, sides in words, letters and signs", () => {
    const all = names.join(" ");
    expect(names.length).toBeGreaterThanOrEqual(8);
    for (const habit of [
      "tab",
      "comma",
      "semicolon",
      "pipe",
      "decimal-comma",
      "letters-before",
      "letters-behind",
    ])
      expect(all).toContain(habit);
    for (const habit of ["words", "signs", "title-lines", "build-column"]) expect(all).toContain(habit);
  });

  it.each(names)("gives the same figures from %s", (name) => {
    const json = jsonOf(textOf(name));
    expect(disagreements(figuresOfJson(json), first, 1e-12)).toEqual([]);
    expect(json.problems).toEqual([]);
    expect(json.builds.map(({ shots, kept }) => [shots, kept])).toEqual([
      [6, 6],
      [6, 6],
      [6, 6],
    ]);
  });
});

describe("what --json prints", () => {
  const odd = comparisonJson(oddSession());

  it("has builds, baseline, comparisons, problems, skipped rows and notes, in this shape down to each figure", () => {
    const named = ["builds", "baseline", "comparisons", "problems", "skipped", "notes"];
    expect(Object.keys(odd).filter((key) => named.includes(key))).toEqual(named);
    for (const build of odd.builds) {
      expect(Object.keys(build)).toEqual(["name", "shots", "kept", "metrics"]);
      for (const figures of Object.values(build.metrics))
        expect(Object.keys(figures)).toEqual(["n", "mean", "sd", "low", "high", "unit"]);
    }
    for (const comparison of odd.comparisons)
      expect(Object.keys(comparison).slice(0, 5)).toEqual(["build", "metric", "difference", "low", "high"]);
  });

  it("names metrics by their keys and units by one set", () => {
    const units = Object.fromEntries(
      Object.entries(comparisonJson(demoSession()).builds[0]!.metrics).map(([key, { unit }]) => [key, unit]),
    );
    expect(units).toEqual({
      ...{ clubSpeed: "mph", ballSpeed: "mph", smash: "", launch: "degrees", direction: "degrees" },
      ...{ spin: "rpm", spinAxis: "degrees", carry: "yd", total: "yd", offline: "yd", height: "ft" },
      ...{ landingAngle: "degrees", attack: "degrees", path: "degrees", face: "degrees" },
      ...{ faceToPath: "degrees", dynamicLoft: "degrees" },
    });
    const known = METRICS.map(({ key }) => key as string);
    expect(Object.keys(units).filter((key) => !known.includes(key))).toEqual([]);
  });

  it("has null where a build was hit once: a mean, but no spread and no limits", () => {
    const single = odd.builds.find(({ shots }) => shots === 1)!;
    expect(single.metrics.carry).toEqual({ n: 1, mean: 164.8, sd: null, low: null, high: null, unit: "yd" });
    const against = odd.comparisons.find(({ build, metric }) => build === single.name && metric === "carry")!;
    expect(against).toMatchObject({ low: null, high: null });
    expect(against.difference).toBeCloseTo(164.8 - (162.6 + 154.8 + 159.6) / 3, 9);
  });

  it("counts unticked shots as shots but not as kept, and rows from 1 in the pasted text", () => {
    expect(odd.builds.map(({ shots, kept }) => [shots, kept])).toEqual([
      [5, 4],
      [4, 3],
      [1, 1],
    ]);
    const text = ["Build,Carry (yd)", "A,150", "A,far", "A,152", "Average,151"].join("\n");
    const { problems, skipped } = jsonOf(text);
    expect(problems).toMatchObject([{ row: 3, column: 2, found: "far" }]);
    expect(Object.keys(problems[0]!).sort()).toEqual(["column", "found", "message", "row"]);
    expect(skipped.map(({ row }) => row)).toEqual([1, 3, 5]);
    for (const one of skipped) expect(one).toEqual({ row: one.row, reason: expect.stringMatching(/\w/) });
  });

  it("carries every digit of a double", () => {
    const { mean } = jsonOf("Build,Carry (yd)\nA,150\nA,150.1\nA,150.3").builds[0]!.metrics.carry!;
    // 450.4 / 3 is 150.1333 without end: the double next to it has these seventeen digits.
    expect(JSON.stringify(mean)).toBe("150.13333333333333");
  });
});

describe("the printed table", () => {
  const long = (b: number) => `a build with a very long name, number ${b}, of a shaft with a very long name`;
  const nine = Array.from({ length: 9 }, (_, b) =>
    [150, 152.5, 149].map((carry) => `${long(b)}\t${carry + b}\t${b - 4}`).join("\n"),
  ).join("\n");
  const tables: [string, string][] = [
    ["the demo", printComparison(demoSession())],
    ["odd names", printComparison(oddSession())],
    [
      "nine builds of long names",
      printComparison(sessionOf(answer(readShots(`Build\tCarry\tOffline\n${nine}`)))),
    ],
  ];

  it.each(tables)("of %s fits 100 columns and has a line for each figure", (_, printed) => {
    const widths = printed.split("\n").map((line) => [...line].length);
    expect(Math.max(...widths)).toBeLessThanOrEqual(100);
    expect(printed).toMatch(/Carry, yd +\d/);
  });
});

describe("readCommandLine(words)", () => {
  const parsed = (...words: string[]) => answer(readCommandLine(words)) as CommandLine;

  it("takes a file, standard input or the demo, and each option", () => {
    expect(parsed().file).toBeNull();
    expect(parsed("-").file).toBe("-");
    expect(
      parsed("shots.csv", "--json", "--baseline", "A", "--goal", "TIGHT", "--out", "x.XLSX"),
    ).toMatchObject({ file: "shots.csv", json: true, baseline: "A", goal: "tight", out: "x.XLSX" });
    expect(parsed("--baseline=A b").baseline).toBe("A b");
  });

  it.each([
    [["--jsn"], /--jsn/],
    [["a.csv", "b.csv"], /One file at a time: found "a.csv" and "b.csv"/],
    [["--goal", "far"], /--goal is "far"; it should be one of carry, tight, window, overall/],
    [["--out", "x.pdf"], /--out is "x.pdf"/],
    [["--units", "furlongs"], /--units is "furlongs"/],
    [["--baseline"], /--baseline/],
  ])("refuses %j in a sentence", (words, sentence) => {
    expect(refusal(readCommandLine(words))).toMatch(sentence);
  });
});

describe("the command", { timeout: 90_000 }, () => {
  it("compares the demo where no file is named, and writes the workbook as well", async () => {
    const out = join(folder, "demo.xlsx");
    const { said, complained, code } = await compare(["--out", out, "--left-handed"]);
    expect([code, complained]).toEqual([0, ""]);
    expect(said).toContain("7-iron fitting (invented demo)");
    const { sheets } = await contentsOfXlsx(readFileSync(out));
    expect(sheets.map(({ name }) => name)).toEqual(["Comparison", "Player", "Shots", "Workings"]);
    const player = Object.values(sheets[1]!.cells).map(({ value }) => value);
    expect(player).toContain("Left-handed");
    expect(player.join("\n")).toContain("For you as a left-handed player, right is the side you stand on");
  });

  it("reads standard input by the name -, and takes baseline and goal", async () => {
    const { said, code } = await compare(
      ["-", "--json", "--baseline", "95 G high-launch", "--goal", "carry"],
      DEMO_TEXT,
    );
    const json: ComparisonJson = JSON.parse(said);
    expect(code).toBe(0);
    expect(json.baseline).toBe("95 g high-launch");
    const wanted = comparisonJson({ ...demoSession(), baseline: "95 g high-launch" });
    expect(json.builds).toEqual(wanted.builds);
    expect(json.comparisons).toEqual(wanted.comparisons);
  });

  it("reads a file with a byte order mark and carriage returns as it reads any other", async () => {
    const name = join(folder, "with bom.csv");
    const text = textOf("semicolon-decimal-comma-letters-before.txt");
    writeFileSync(name, `\ufeff${text.replace(/\r?\n/g, "\r\n")}`);
    const { said, code } = await compare([name, "--json"]);
    expect(code).toBe(0);
    expect(disagreements(figuresOfJson(JSON.parse(said)), figuresOfJson(jsonOf(text)), 1e-12)).toEqual([]);
  });

  it("ends with 2 and one line on bad use, a missing file, an unreadable table or an unknown baseline", async () => {
    const unreadable = join(folder, "letter.txt");
    writeFileSync(unreadable, "Dear fitter,\nthank you for the afternoon.\n");
    const asks: [string[], string][] = [
      [["--jsn"], "--jsn"],
      [[join(folder, "nowhere.csv")], `There is no file ${join(folder, "nowhere.csv")}; `],
      [[unreadable, "--json"], ""],
      [["--baseline", "nobody's"], `--baseline is "nobody's"; it should be one of "95 g high-launch"`],
      [["--out", join(folder, "no", "such", "folder.xlsx")], "cannot be written: its folder is not there"],
    ];
    const found = await Promise.all(asks.map(([words]) => compare(words)));
    found.forEach(({ said, complained, code }, i) => {
      expect([code, said], asks[i]![0].join(" ")).toEqual([2, ""]);
      expect(complained).toMatch(/^[^\n]{20,}\n$/);
      expect(complained).toContain(asks[i]![1]);
    });
  });
});

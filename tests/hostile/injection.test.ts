import { XMLParser, XMLValidator } from "fast-xml-parser";
import { strFromU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, test } from "vitest";
import { excelHost } from "../../src/hosts/excel/excel-host.ts";
import { writeXlsx } from "../../src/hosts/file/write-xlsx.ts";
import { chancePicture } from "../../src/pictures/chance-picture.ts";
import { drawChart } from "../../src/pictures/draw-chart.ts";
import { flightPicture } from "../../src/pictures/flight-picture.ts";
import type { Frame } from "../../src/pictures/frame.ts";
import { groupPicture } from "../../src/pictures/group-picture.ts";
import { intervalPicture } from "../../src/pictures/interval-picture.ts";
import { svgText } from "../../src/pictures/svg-text.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { BUILD_COLORS } from "../../src/sheets/palette.ts";
import type { CellValue, WorkbookPlan } from "../../src/sheets/plan.ts";
import { answer } from "../club/answer.ts";
import { contentsOfXlsx } from "../hosts/file/contents-of-xlsx.ts";
import { contentsOfOfficeHost } from "../office-host/contents-of-office-host.ts";
import { officeHost } from "../office-host/office-host.ts";
import { planOfCells } from "../sheets/plan-of-cells.ts";
import type { WorkbookContents } from "../workbook-contents.ts";
import { FORMULAS, SCRIPTS, SLY_NAMES, slySession } from "./sly-session.ts";

let plan: WorkbookPlan;
beforeAll(() => {
  plan = comparisonWorkbook(slySession(), NOTHING_TAKEN, "2026-11-25 10:00 UTC");
});

test("the session has every sly name, so that what follows is about them", () => {
  expect(slySession().builds.map(({ name }) => name)).toEqual(SLY_NAMES);
});

describe("pictures with names that would be scripts", () => {
  const frame: Frame = {
    look: { ink: "#111111", quiet: "#555555", line: "#999999", surface: "#ffffff", builds: BUILD_COLORS },
    width: 296,
    id: "p",
    show: (value, decimals) => value.toFixed(decimals),
  };
  const builds = SCRIPTS.map((name, place) => ({ name, place }));
  const axis = { title: SCRIPTS[0], unit: SCRIPTS[1], decimals: 1 };
  const ahead = { ahead: SCRIPTS[3], height: SCRIPTS[4], heightPerAhead: 3 };
  const words = SCRIPTS.join(" ");
  const drawings: Record<string, () => string> = {
    groups: () =>
      svgText(
        groupPicture(
          frame,
          builds.map((build) => ({ ...build, shots: [{ carry: 150 + build.place, offline: 2 }], left: [] })),
          SCRIPTS[0],
          words,
        ),
      ),
    intervals: () =>
      svgText(
        intervalPicture(
          frame,
          builds.map((build) => ({ ...build, mean: 150, low: 148, high: 152 })),
          axis,
          words,
        ),
      ),
    chances: () =>
      svgText(
        chancePicture(
          frame,
          builds.map((build) => ({ ...build, chance: 0.2, words: build.name })),
          words,
        ),
      ),
    flights: () =>
      svgText(
        flightPicture(
          frame,
          builds.map((build) => ({
            ...build,
            points: [
              { ahead: 0, height: 0 },
              { ahead: 150, height: 30 },
            ],
          })),
          ahead,
          words,
        ),
      ),
    "charts of the sheets": () =>
      plan.sheets
        .flatMap(({ charts }) => charts)
        .map((chart) => {
          const series = chart.series.map(({ name }) => ({ x: [name, 1], y: [150, 151] }));
          const sly = { ...chart, title: SCRIPTS[1], alt: words, x: { ...chart.x, title: SCRIPTS[0] } };
          return drawChart(sly, { series }, { width: 480, height: 340 });
        })
        .join("\n"),
  };

  test.each(Object.keys(drawings))("%s hold them as texts and as nothing else", (name) => {
    const svg = drawings[name]!();
    expect(svg).toContain("sly()");
    for (const one of svg.split(/\n(?=<svg )/)) {
      expect(XMLValidator.validate(one)).toBe(true);
      const { tags, attributes } = namesIn(one);
      expect(tags.filter((tag) => !DRAWN.has(tag))).toEqual([]);
      expect(attributes.filter((attribute) => /^on|href$|^src$/i.test(attribute))).toEqual([]);
    }
  });

  /** All that the pictures are drawn with. */
  const DRAWN = new Set("svg g path line rect circle text tspan title desc defs clipPath use".split(" "));
});

describe("a workbook of a session whose names would be scripts", () => {
  let parts: Map<string, string>;
  let bytes: Uint8Array;
  beforeAll(async () => {
    bytes = answer(await writeXlsx(plan));
    parts = new Map(Object.entries(unzipSync(bytes)).map(([path, content]) => [path, strFromU8(content)]));
  });

  test("is well-formed in every part, and no text became an element, a relationship or a formula", () => {
    expect(parts.size).toBeGreaterThan(10);
    for (const [path, xml] of parts) {
      expect(XMLValidator.validate(xml), path).toBe(true);
      const { tags } = namesIn(xml);
      expect(
        tags.filter((tag) => /^(script|img|svg|hyperlink|externalReference)$/i.test(tag)),
        path,
      ).toEqual([]);
      expect(xml, path).not.toMatch(/TargetMode="External"|Target="[^"]*sly/i);
      for (const [, formula] of xml.matchAll(/<(?:f|formula|formula1|formula2|c:f)(?: [^>]*)?>([^<]*)</g)) {
        expect(outsideTexts(formula!), path).not.toMatch(/sly|HYPERLINK|cmd/i);
      }
    }
  });

  test("has each name as a text, letter for letter, in the file and in the spreadsheet", async () => {
    const host = officeHost();
    answer(await excelHost().write(plan));
    for (const contents of [await contentsOfXlsx(bytes), contentsOfOfficeHost(host.workbook)]) {
      for (const name of SLY_NAMES) {
        const cells = cellsWith(contents, name);
        expect(cells.length, name).toBeGreaterThan(0);
        expect(cells.filter(({ formula }) => formula !== undefined && !/^['(\w]/.test(formula))).toEqual([]);
      }
      const shots = contents.sheets.find(({ name }) => name === "Shots")!;
      const typed = Object.values(shots.cells).filter(({ value }) => SLY_NAMES.includes(String(value)));
      expect(typed.length).toBeGreaterThanOrEqual(2 * 3 * SLY_NAMES.length);
      expect(typed.filter(({ formula }) => formula !== undefined)).toEqual([]);
    }
  });
});

describe("texts that a spreadsheet would calculate", () => {
  const cells = FORMULAS.map((text): CellValue[] => [text]);

  test("are texts in the file, and stay so when their cell is edited", async () => {
    const bytes = answer(await writeXlsx(planOfCells(cells)));
    const { sheets } = await contentsOfXlsx(bytes);
    const found = FORMULAS.map((_, i) => sheets[0]!.cells[`A${i + 1}`]);
    expect(found.map((cell) => cell?.value)).toEqual([...FORMULAS]);
    expect(found.filter((cell) => cell?.formula !== undefined)).toEqual([]);
    const parts = unzipSync(bytes);
    const xml = strFromU8(parts["xl/worksheets/sheet1.xml"]!);
    expect(xml).not.toContain("<f");
    // Source: ECMA-376 part 1, 18.8.45 (xf), quotePrefix. A text that begins with white space needs no such mark.
    const marked = quotePrefixed(strFromU8(parts["xl/styles.xml"]!));
    for (const [i, text] of FORMULAS.entries()) {
      const style = Number(new RegExp(`<c r="A${i + 1}"[^>]* s="(\\d+)"`).exec(xml)?.[1] ?? 0);
      expect(marked.has(style), text).toBe(/^[=+@-]/.test(text));
    }
  });

  test("are texts in the spreadsheet", async () => {
    const host = officeHost();
    answer(await excelHost().write(planOfCells(cells)));
    const held = host.workbook.sheets.find(({ bag }) => bag.Name === "Cells")!.cells;
    expect([...held.values()]).toEqual(FORMULAS.map((value) => ({ value, quoted: true })));
  });
});

/** The places among the looks of cells that are marked as text. */
function quotePrefixed(styles: string): Set<number> {
  const looks = /<cellXfs[\s\S]*?<\/cellXfs>/.exec(styles)![0];
  const marked = [...looks.matchAll(/<xf [^>]*>/g)].map(([xf]) => /quotePrefix="1"/.test(xf));
  return new Set(marked.flatMap((is, place) => (is ? [place] : [])));
}

/** A formula without its quoted texts and quoted names of sheets. */
function outsideTexts(formula: string): string {
  const plain = formula.replaceAll("&quot;", '"').replaceAll("&apos;", "'");
  return plain.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, "");
}

const cellsWith = ({ sheets }: WorkbookContents, text: string) =>
  sheets.flatMap(({ cells }) => Object.values(cells).filter(({ value }) => value === text));

/** The names of all elements and attributes of a document. */
function namesIn(xml: string): { tags: string[]; attributes: string[] } {
  const tags: string[] = [];
  const attributes: string[] = [];
  const walk = (nodes: readonly Record<string, unknown>[]) => {
    for (const node of nodes) {
      attributes.push(...Object.keys((node[":@"] ?? {}) as object).map((name) => name.slice(2)));
      for (const [tag, inside] of Object.entries(node)) {
        if (tag === ":@" || !Array.isArray(inside)) continue;
        tags.push(tag);
        walk(inside);
      }
    }
  };
  walk(new XMLParser({ preserveOrder: true, ignoreAttributes: false }).parse(xml));
  return { tags, attributes };
}

import { expect, it } from "vitest";
import type { GoalChances } from "../../src/fitting/chances.ts";
import { putChanceChart } from "../../src/sheets/chance-chart.ts";
import { area, SheetDraft } from "../../src/sheets/sheet-draft.ts";
import { GREEN } from "../../src/sheets/styles.ts";
import { formatAt, styleAt } from "./looks-at.ts";
import { rowAt } from "./row-at.ts";

it("putChanceChart(...) draws a bar for each build from cells behind those of the other charts", () => {
  const [draft, workings] = [new SheetDraft("Comparison"), new SheetDraft("Workings")];
  const builds = [
    { build: "A", chance: 0.256 },
    { build: "B", chance: 0.744 },
  ];
  putChanceChart(draft, workings, "Workings", { builds } as unknown as GoalChances, 3, area(20, 0, 15, 4));
  const sheet = workings.plan();
  expect([1, 2, 3, 4].map((row) => rowAt(sheet, row, 26, 2))).toEqual([
    ["Build", "Chance"],
    ["A", 0.256],
    ["B", 0.744],
    [null, null],
  ]);
  expect([1, 3].map((row) => styleAt(sheet, row, 27))).toEqual(["headingCentre", "plain"]);
  expect([26, 27].map((column) => [formatAt(sheet, 2, column), formatAt(sheet, 3, column)])).toEqual([
    [undefined, undefined],
    ["0%", "0%"],
  ]);
  const figures = (column: number) => ({ sheet: "Workings", area: area(2, column, 2) });
  expect(draft.plan().charts).toEqual([
    {
      name: "Chance of being best",
      title: expect.stringMatching(/^Chance of being/),
      alt: expect.stringMatching(/A 26 in 100, B 74 in 100/),
      area: area(20, 0, 15, 4),
      kind: "bar",
      x: { title: "", format: "@" },
      y: { title: "", least: 0, most: 1, format: "0%" },
      series: [
        {
          ...{ name: "Chance of being best", x: figures(26), y: figures(27), color: GREEN },
          ...{ marker: "none", markerSize: 0, line: "none", unlisted: false },
        },
      ],
      legend: false,
    },
  ]);
});

it("putChanceChart(...) says in the text of the picture that chances are rounded where they do not make 100", () => {
  const [draft, workings] = [new SheetDraft("Comparison"), new SheetDraft("Workings")];
  const builds = ["A", "B", "C"].map((build) => ({ build, chance: 1 / 3 }));
  putChanceChart(draft, workings, "Workings", { builds } as unknown as GoalChances, 3, area(20, 0, 15, 4));
  expect(draft.plan().charts[0]!.alt).toMatch(/C 33 in 100\. Each is rounded, .* 100\.$/);
});

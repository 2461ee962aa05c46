import { readFile, writeFile } from "node:fs/promises";
import { drawChart } from "../../src/pictures/draw-chart.ts";
import type { ChartPlan, SeriesPlan } from "../../src/sheets/plan.ts";
import { area } from "../../src/sheets/sheet-draft.ts";

/**
 * Draws the README's evidence from the lines of the decide bench:
 * `npm run --silent bench -- decide > decide.jsonl && npx tsx tests/bench/evidence-picture.ts decide.jsonl`
 */
const [file] = process.argv.slice(2);
const lines = (await readFile(file!, "utf8")).split("\n").filter((line) => line.startsWith("{"));
const points = lines
  .map((line) => JSON.parse(line))
  .filter(({ what, equalShots }) => /true means: supposed$/.test(what) && typeof equalShots === "number");

const nowhere = { sheet: "", area: area(0, 0) };
const series = (name: string, color: string, marker: SeriesPlan["marker"]): SeriesPlan => ({
  name,
  x: nowhere,
  y: nowhere,
  color,
  marker,
  markerSize: 8,
  line: "solid",
  unlisted: false,
});
const chart: ChartPlan = {
  name: "evidence",
  title: "Shots for the same rate of right choices, four builds",
  alt: "The sequential plan reaches each rate of right choices with about half the shots of equal allocation.",
  area: area(0, 0),
  kind: "scatter",
  x: { title: "Shots hit in all", least: 0, most: 100, format: "0" },
  y: { title: "Right choices", least: 0.64, most: 0.78, format: "0%" },
  series: [
    series("Hit next what says most; stop when sure", "#1d5c4a", "circle"),
    series("Equal shots each; highest mean wins", "#c8571b", "square"),
  ],
  legend: true,
};
/** Each plan's points from few shots to many. */
const along = (shots: "sequentialShots" | "equalShots") => {
  const sorted = [...points].sort((a, b) => a[shots] - b[shots]);
  return {
    x: sorted.map((point) => point[shots] as number),
    y: sorted.map(({ rightRate }) => rightRate as number),
  };
};
const data = { series: [along("sequentialShots"), along("equalShots")] };
const svg = drawChart(chart, data, { width: 640, height: 360 });
await writeFile(new URL("pictures/shots-for-right-choices.svg", import.meta.url), svg);

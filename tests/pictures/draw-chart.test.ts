import { XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { drawChart } from "../../src/pictures/draw-chart.ts";
import type { ChartPlan, SeriesPlan } from "../../src/sheets/plan.ts";
import { samplePlan } from "../sheets/sample-plan.ts";

const [scatter, bars] = samplePlan().sheets[0]!.charts as [ChartPlan, ChartPlan];
const SIZE = { width: 480, height: 340 };

/** The scatter of the sample plan with one series and one shot. */
function oneShot(x: number, y: number, series: Partial<SeriesPlan> = {}): string {
  const plan = { ...scatter, series: [{ ...scatter.series[0]!, ...series }] };
  return drawChart(plan, { series: [{ x: [x], y: [y] }] }, SIZE);
}

/** Where the label of a round figure stands. */
function labelAt(svg: string, label: string, axis: "x" | "y"): number {
  const found = new RegExp(`<text x="([\\d.]+)" y="([\\d.]+)"[^>]*>${label}</text>`).exec(svg)!;
  return Number(found[axis === "x" ? 1 : 2]);
}

function markerPlace(svg: string): [x: number, y: number] {
  const plot = svg.slice(svg.indexOf("<g clip-path"));
  const [, x, y] = /transform="translate\(([\d.]+),([\d.]+)\)"/.exec(plot)!;
  return [Number(x), Number(y)];
}

describe("a chart drawn as a picture", () => {
  it("is well-formed whatever the words in it", () => {
    const svg = drawChart({ ...scatter, title: 'A < B & "C"', alt: "a\u0001b" }, { series: [] }, SIZE);
    expect(XMLValidator.validate(svg)).toBe(true);
  });

  it("carries its title and its text for those who do not see it", () => {
    const svg = oneShot(0, 250);
    expect(svg).toContain(`<title>${scatter.title}</title>`);
    expect(svg).toContain(`<desc>${scatter.alt}</desc>`);
  });

  it("writes a long title smaller in a narrow picture, so that neither end is cut off", () => {
    const title = "Mean carry, with 95 % limits";
    const size = (width: number) => {
      const svg = drawChart({ ...scatter, title }, { series: [] }, { ...SIZE, width });
      return Number(/font-size="([\d.]+)"[^>]*font-weight="bold"/.exec(svg)![1]);
    };
    expect(size(480)).toBe(15);
    // A bold letter is at most some 0.65 of its height wide.
    expect(title.length * 0.65 * size(224)).toBeLessThan(224);
    expect(size(224)).toBeGreaterThan(11);
  });

  it("puts a shot where the axes say", () => {
    const svg = oneShot(10, 250);
    const [x, y] = markerPlace(svg);
    expect(x).toBeCloseTo(labelAt(svg, "10", "x"), 1);
    // A label's baseline stands 4 pixels below its line.
    expect(y).toBeCloseTo(labelAt(svg, "250", "y") - 4, 1);
  });

  it("tells series apart by shape as well as colour", () => {
    const shape = (marker: SeriesPlan["marker"]) => / d="([^"]+)"/.exec(oneShot(0, 250, { marker }))![1];
    const markers = ["circle", "square", "diamond", "triangle", "x", "plus"] as const;
    expect(new Set(markers.map(shape)).size).toBe(markers.length);
  });

  it("shows no shot that lacks a figure, and breaks a line there", () => {
    const plan = { ...scatter, series: [{ ...scatter.series[0]!, line: "solid" as const }] };
    const svg = drawChart(plan, { series: [{ x: [0, 1, "x", 3, 4], y: [250, 251, 252, null, 254] }] }, SIZE);
    const plot = svg.slice(svg.indexOf("<g clip-path"), svg.indexOf("</g>"));
    expect(plot.match(/translate/g)).toHaveLength(3);
    expect(/ d="(M[^"]+)" fill="none"/.exec(plot)![1]!.match(/M/g)).toHaveLength(2);
    expect(svg).not.toMatch(/NaN|undefined/);
  });

  it("draws limits that share a name with nothing in the legend", () => {
    const svg = drawChart(scatter, { series: [] }, SIZE);
    expect(svg).toContain(">A 65 g</text>");
    expect(svg).not.toContain("A 65 g mean");
  });

  it("breaks a long legend into lines that stay inside the picture", () => {
    const series = scatter.series.map((one) => ({
      ...one,
      name: "a long name for a build",
      unlisted: false,
    }));
    const svg = drawChart({ ...scatter, series }, { series: [] }, SIZE);
    const places = [...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]*>a long name/g)];
    expect(new Set(places.map(([, , y]) => y)).size).toBeGreaterThan(1);
    for (const [, x] of places) expect(Number(x)).toBeLessThan(SIZE.width - 120);
  });

  it("makes a bar as long as its figure", () => {
    const plan = { ...bars, y: { ...bars.y, hideLabels: false } };
    const svg = drawChart(plan, { series: [{ x: ["A", "B"], y: [100, 200] }] }, SIZE);
    const heights = [...svg.matchAll(/<rect x="[\d.]+" y="[\d.]+" width="[\d.]+" height="([\d.]+)"/g)].map(
      ([, height]) => Number(height),
    );
    expect(heights[1]! / heights[0]!).toBeCloseTo(2, 2);
    expect(heights[0]!).toBeCloseTo(labelAt(svg, "0", "y") - labelAt(svg, "100", "y"), 1);
  });

  it("keeps a bar inside bounds that the plan has set", () => {
    const svg = drawChart(bars, { series: [{ x: ["A"], y: [-40] }] }, SIZE);
    expect(svg).toMatch(/height="0" fill="#1d5c4a"/);
  });
});

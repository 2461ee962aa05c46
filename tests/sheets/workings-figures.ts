import type { ComparisonJson } from "../../src/fitting/comparison-json.ts";
import { METRICS } from "../../src/shots/metrics.ts";

type Answer = string | number | boolean | null | undefined;

/** Columns of the Workings sheet that `--json` prints as well, by what it calls them. */
const OF_A_BUILD = { n: "n", mean: "Mean", sd: "SD", low: "Low 95 %", high: "High 95 %" } as const;
const OF_A_DIFFERENCE = { difference: "Difference", low: "Difference low", high: "Difference high" } as const;

/** A figure by its place, `build / metric / figure`; one that cannot be had is null. */
export type Figures = ReadonlyMap<string, number | null>;

/** The figures of a calculated Workings sheet. */
export function figuresOfWorkings(rows: readonly (readonly Answer[])[]): Figures {
  const heading = rows.findIndex((row) => row[0] === "Build" && row[1] === "Metric");
  const column = (name: string) => rows[heading]!.indexOf(name);
  const figures = new Map<string, number | null>();
  for (const row of rows.slice(heading + 1)) {
    const metric = METRICS.find(({ label }) => label === row[1]);
    if (!metric || !row[2]) continue;
    const put = (kind: string, names: Record<string, string>) => {
      for (const [figure, name] of Object.entries(names)) {
        const found = row[column(name)];
        figures.set(`${row[0]} / ${metric.key} / ${kind}${figure}`, typeof found === "number" ? found : null);
      }
    };
    put("", OF_A_BUILD);
    if (typeof row[column("Difference")] === "number") put("against baseline ", OF_A_DIFFERENCE);
  }
  return figures;
}

/** The same figures of what `--json` prints. */
export function figuresOfJson(json: ComparisonJson): Figures {
  const figures = new Map<string, number | null>();
  for (const { name, metrics } of json.builds) {
    for (const [key, values] of Object.entries(metrics)) {
      for (const figure of Object.keys(OF_A_BUILD) as (keyof typeof OF_A_BUILD)[])
        figures.set(`${name} / ${key} / ${figure}`, values[figure]);
    }
  }
  for (const { build, metric, ...values } of json.comparisons) {
    for (const figure of Object.keys(OF_A_DIFFERENCE) as (keyof typeof OF_A_DIFFERENCE)[])
      figures.set(`${build} / ${metric} / against baseline ${figure}`, values[figure]);
  }
  return figures;
}

/**
 * Where two sets of figures differ by more than `relative`, told in words; empty where they agree. Against a figure that
 * comes to 0 by cancelling, the same is asked of the difference itself.
 */
export function disagreements(found: Figures, wanted: Figures, relative: number): string[] {
  const places = new Set([...found.keys(), ...wanted.keys()]);
  return [...places].flatMap((place) => {
    const [a, b] = [found.get(place), wanted.get(place)];
    if (a === undefined || b === undefined || a === null || b === null)
      return a === b ? [] : [`${place}: ${a} and ${b}`];
    return Math.abs(a - b) <= relative * Math.max(Math.abs(b), 1e-3) ? [] : [`${place}: ${a} and ${b}`];
  });
}

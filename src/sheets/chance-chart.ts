import type { GoalChances } from "../fitting/chances.ts";
import { outOfHundred, roundedNote } from "../fitting/out-of-hundred.ts";
import { FIRST_CHART_COLUMN, FIRST_CHART_ROW } from "./chart-place.ts";
import type { Area } from "./plan.ts";
import { area, type SheetDraft } from "./sheet-draft.ts";
import { GREEN } from "./styles.ts";

/** A bar for each build: its chance of being the best one, as worked out when the sheet was made. */
export function putChanceChart(
  draft: SheetDraft,
  workings: SheetDraft,
  sheet: string,
  chances: GoalChances,
  builds: number,
  where: Area,
): void {
  const column = FIRST_CHART_COLUMN + 2 * builds + 4;
  const { length } = chances.builds;
  workings.put(FIRST_CHART_ROW - 1, column, [["Build", "Chance"]], "headingCentre");
  workings.put(
    FIRST_CHART_ROW,
    column,
    chances.builds.map(({ build, chance }) => [build, chance]),
    "plain",
  );
  workings.format(area(FIRST_CHART_ROW, column + 1, length), "0%");
  const said = chances.builds
    .map(({ build, chance }) => `${build} ${outOfHundred(chance)} in 100`)
    .join(", ");
  const rounded = roundedNote(chances.builds.map(({ chance }) => chance));
  const at = (step: number) => ({ sheet, area: area(FIRST_CHART_ROW, column + step, length) });
  draft.chart({
    name: "Chance of being best",
    title: "Chance of being the best build",
    alt: `Bars: ${said}.${rounded && ` ${rounded}`}`,
    area: where,
    kind: "bar",
    x: { title: "", format: "@" },
    y: { title: "", least: 0, most: 1, format: "0%" },
    series: [
      {
        name: "Chance of being best",
        x: at(0),
        y: at(1),
        color: GREEN,
        marker: "none",
        markerSize: 0,
        line: "none",
        unlisted: false,
      },
    ],
    legend: false,
  });
}

import type { Session } from "../fitting/session.ts";
import type { SessionFlight } from "../fitting/session-flight.ts";
import { metricOf } from "../shots/metrics.ts";
import { showing } from "../shots/showing.ts";
import { FIRST_CHART_COLUMN, FIRST_CHART_ROW } from "./chart-place.ts";
import { shown } from "./chart-words.ts";
import { headingOf, numberFormat } from "./display-session.ts";
import { buildColor, buildMarker } from "./palette.ts";
import type { Area, SeriesPlan } from "./plan.ts";
import { sessionWords } from "./session-words.ts";
import { area, type SheetDraft } from "./sheet-draft.ts";

/**
 * The mean flight of each build seen from the side: a line of computed places, which stand on the Workings sheet to the
 * right of what the other charts draw on, with the build's marker on its top and where it lands: lines know but two
 * ways of being drawn, so builds would be told apart by colour alone. Answers whether there was a flight to draw.
 */
export function putFlightChart(
  draft: SheetDraft,
  workings: SheetDraft,
  sheet: string,
  session: Session,
  { flights }: SessionFlight,
  where: Area,
): boolean {
  if (flights.length === 0) return false;
  const [carry, height] = [metricOf("carry"), metricOf("height")];
  const [ahead, up] = [showing(carry, session.units), showing(height, session.units)];
  let [farthest, highest] = [0, 0];
  const told: string[] = [];
  const series = flights.map((flight, place): SeriesPlan[] => {
    const b = session.builds.findIndex(({ name }) => name === flight.build);
    const column = firstColumn(session) + 2 * place;
    const rows = flight.points.map((point) => [ahead(point.ahead), up(point.height)]);
    for (const [far, high] of rows) {
      farthest = Math.max(farthest, far!);
      highest = Math.max(highest, high!);
    }
    const headings = [`${flight.build}: ahead`, `${flight.build}: height`];
    workings.put(FIRST_CHART_ROW - 1, column, [headings], "headingCentre");
    workings.put(FIRST_CHART_ROW, column, rows, "plain");
    const top = rows.reduce((most, row) => (row[1]! > most[1]! ? row : most));
    const marked = [top, rows.at(-1)!];
    const markedRow = FIRST_CHART_ROW + rows.length + 1;
    workings.put(markedRow, column, marked, "plain");
    const [high, far] = [shown(session, "height", top[1]!), shown(session, "carry", marked[1]![0]!)];
    told.push(`${flight.build} flies ${high} high and ${far} far.`);
    const at = (step: number, row: number, count: number) => ({
      sheet,
      area: area(row, column + step, count),
    });
    const color = buildColor(b);
    return [
      {
        name: `${flight.build}: way`,
        x: at(0, FIRST_CHART_ROW, rows.length),
        y: at(1, FIRST_CHART_ROW, rows.length),
        color,
        marker: "none",
        markerSize: 0,
        line: b % 2 === 1 ? "dash" : "solid",
        unlisted: true,
      },
      {
        name: flight.build,
        x: at(0, markedRow, marked.length),
        y: at(1, markedRow, marked.length),
        color,
        marker: buildMarker(b),
        markerSize: 8,
        line: "none",
        unlisted: false,
      },
    ];
  });
  draft.chart({
    name: "Mean flights from the side",
    title: "Mean flights from the side",
    alt: `A line for each of ${flights.length} builds: distance ahead across, height upwards, drawn by the flight model through the mean strike. ${sessionWords(session)(told.join(" "))}`,
    area: where,
    kind: "scatter",
    x: { title: headingOf(carry, session.units), ...upTo(farthest), format: numberFormat(0) },
    y: { title: headingOf(height, session.units), ...upTo(highest), format: numberFormat(0) },
    series: series.flat(),
    legend: true,
  });
  return true;
}

/** Behind the group chart's pairs, the limits chart and the chance chart, each of two columns and a gap. */
function firstColumn(session: Session): number {
  return FIRST_CHART_COLUMN + 2 * session.builds.length + 7;
}

function upTo(most: number): { least: number; most: number } {
  const step = [1, 2, 5, 10, 20, 50].find((size) => most / size <= 10) ?? 100;
  return { least: 0, most: Math.ceil((most * 1.03) / step) * step };
}

import type { Session } from "../fitting/session.ts";
import type { Metric, MetricKey } from "../shots/metrics.ts";
import type { ShotTable } from "../shots/shot-table.ts";
import { orderedMetrics } from "../shots/unit-set.ts";
import { areaName, cellName, sheetName } from "./a1.ts";
import { area } from "./sheet-draft.ts";

/** Row of the headings, counted from 0; the shots begin below it. */
export const HEADING_ROW = 3;
/** Keep stands first, where the eye and the mouse are. */
export const KEEP_COLUMN = 0;
const BUILD_COLUMN = 1;

/** Where on the Shots sheet things stand, for the formulas of the other sheets. */
export interface ShotsLayout {
  readonly sheet: string;
  readonly firstRow: number;
  readonly rows: number;
  /** `'Shots'!$A$5:$A$28` */
  readonly keep: string;
  readonly build: string;
  readonly metrics: readonly Metric[];
  /** Column of figures of a metric. */
  figures(key: MetricKey): string;
  /** All columns of figures at once. */
  readonly allFigures: string;
  /** One cell of a metric, by the number of the shot counted from 0. */
  figure(key: MetricKey, shot: number): string;
  keepCell(shot: number): string;
  buildCell(shot: number): string;
}

/** Columns of text between the build and the figures, each only where the table has something in it. */
export function textColumns(table: ShotTable): { heading: string; cells: readonly string[] }[] {
  return [
    { heading: "Club", cells: table.club },
    { heading: "Shot", cells: table.shot },
    { heading: "Time", cells: table.time },
  ].filter(({ cells }) => cells.some((cell) => cell !== ""));
}

/** Where everything will stand on a Shots sheet of this name. */
export function shotsLayout(session: Session, name: string): ShotsLayout {
  const { table } = session;
  const metrics = orderedMetrics(table.values.keys());
  const before = 2 + textColumns(table).length;
  const firstRow = HEADING_ROW + 1;
  const place = (key: MetricKey) => before + metrics.findIndex((metric) => metric.key === key);
  const at = (column: number, columns = 1) =>
    `${sheetName(name)}!${areaName(area(firstRow, column, table.size, columns), "both")}`;
  const cell = (shot: number, column: number) =>
    `${sheetName(name)}!${cellName(firstRow + shot, column, "both")}`;
  return {
    sheet: name,
    firstRow,
    rows: table.size,
    keep: at(KEEP_COLUMN),
    build: at(BUILD_COLUMN),
    metrics,
    figures: (key) => at(place(key)),
    allFigures: at(before, metrics.length),
    figure: (key, shot) => cell(shot, place(key)),
    keepCell: (shot) => cell(shot, KEEP_COLUMN),
    buildCell: (shot) => cell(shot, BUILD_COLUMN),
  };
}

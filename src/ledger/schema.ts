import { METRICS, type MetricKey, metricOf } from "../shots/metrics.ts";

/** The form that rows are written in now. Each row carries the number of the form it was written in. */
export const SCHEMA_VERSION = 2;

/**
 * How a column is kept: `text`; `number` to full double precision; `whole` for counts; `day` as `yyyy-mm-dd`, which a
 * workbook shows as a date; `truth` for yes and no.
 */
export type ColumnType = "text" | "number" | "whole" | "day" | "truth";

export interface Column {
  readonly key: string;
  /** In a workbook and in delimited text. Columns are known by their headings, in any order. */
  readonly heading: string;
  readonly type: ColumnType;
  readonly unit: string;
  /** Decimals that a workbook shows; the figure itself is kept in full. */
  readonly decimals: number;
  readonly meaning: string;
}

/** A table of the ledger: what it is called, its columns, and which of them tells its rows apart. */
export interface Schema {
  readonly table: "Ledger" | "ShotArchive";
  /** Name of its sheet. */
  readonly sheet: string;
  /** Of the column that no two rows share. */
  readonly key: string;
  readonly columns: readonly Column[];
}

/** Metrics that a ledger row has a mean, a spread and a count of; the archive keeps all. */
export const MAIN_METRICS: readonly MetricKey[] = [
  "clubSpeed",
  "attack",
  "ballSpeed",
  "smash",
  "launch",
  "spin",
  "height",
  "landingAngle",
  "carry",
  "offline",
];

const column = (
  key: string,
  heading: string,
  type: ColumnType,
  unit: string,
  meaning: string,
  decimals = 0,
): Column => ({ key, heading, type, unit, decimals, meaning });

const withUnit = (label: string, unit: string) =>
  unit === "" ? label : `${label} (${unit === "degrees" ? "°" : unit})`;

/** Three columns a metric: mean, spread and how many shots had the figure. */
function metricColumns(key: MetricKey): Column[] {
  const { label, unit, decimals } = metricOf(key);
  const at = (heading: string) => withUnit(heading, unit);
  return [
    column(
      `${key}Mean`,
      at(label),
      "number",
      unit,
      `mean of the kept shots: ${label.toLowerCase()}`,
      decimals,
    ),
    column(`${key}Sd`, at(`${label} SD`), "number", unit, "sample standard deviation, n - 1", decimals + 1),
    column(`${key}N`, `${label} n`, "whole", "", "kept shots that have this figure"),
  ];
}

/** One row a build a session. */
// biome-ignore format: a table reads best with a line a row
export const LEDGER: Schema = {
  table: "Ledger",
  sheet: "Ledger",
  key: "entry",
  columns: [
    column("schema", "Form", "whole", "", "form of this row, for later versions to know"),
    column("entry", "Entry", "text", "", "name of this row; never used twice"),
    column("session", "Session", "text", "", "name of the session, made from its shots"),
    column("date", "Date", "day", "", "day of the session"),
    column("player", "Player", "text", "", "name, or a code where names were taken out"),
    column("hand", "Hand", "text", "", "right or left"),
    column("title", "Title", "text", "", "what the session was called"),
    column("place", "Place", "text", "", "where it was hit"),
    column("club", "Club", "text", "", "the club as the table calls it"),
    column("kind", "Kind of club", "text", "", "driver, fairway, hybrid, long, mid or short iron, wedge"),
    column("goal", "Goal", "text", "", "carry, tight, window or overall"),
    column("build", "Build", "text", "", "the build's name"),
    column("baseline", "Baseline", "truth", "", "whether the others were held against this build"),
    column("shaftWeight", "Shaft weight (g)", "number", "g", "weight of the shaft as tested"),
    column("length", "Length (in)", "number", "in", "length of the club", 2),
    column("flex", "Flex", "text", "", "in the shop's own word"),
    column("profile", "Profile", "text", "", "bend or launch profile, in the shop's own word"),
    column("head", "Head", "text", "", "in the shop's own word"),
    column("loft", "Loft (°)", "number", "degrees", "loft of the head", 1),
    column("swingweight", "Swingweight", "text", "", "as a code, such as D2"),
    column("shots", "Shots", "whole", "", "shots hit with this build"),
    column("kept", "Kept", "whole", "", "of these, shots that count"),
    ...MAIN_METRICS.flatMap(metricColumns),
    column("carrySameAir", "Carry, standard air (yd)", "number", "yd", "mean carry of the same strikes in standard air at sea level", 1),
    column("airDensity", "Air density (kg/m3)", "number", "kg/m3", "air it was hit in; empty where it was not stated", 4),
    column("tempo", "Tempo", "number", "", "mean of a column so headed, where the table has one", 2),
    column("gain", "Carry gain (yd)", "number", "yd", "mean carry less the baseline's, same session", 1),
    column("gainLow", "Gain from (yd)", "number", "yd", "lower 95 % limit of the gain, Welch", 1),
    column("gainHigh", "Gain to (yd)", "number", "yd", "upper 95 % limit of the gain, Welch", 1),
    column("verdict", "Verdict", "text", "", "of the session: clear, leaning, too close to call; empty where none was reached"),
    column("chosen", "Chosen", "truth", "", "whether the verdict names this build; of none where it is too close to call"),
    column("chance", "Chance", "number", "", "chance that this build serves the goal best, 0 to 1", 3),
    column("ordered", "Ordered", "text", "", "what was ordered of this build; empty: nothing"),
    column("source", "Source", "text", "", "fitting, or where the row was brought in from"),
    column("note", "Note", "text", "", "free words"),
  ],
};

/** One row a shot. Metrics that no shot of a workbook has get no column there. */
// biome-ignore format: a table reads best with a line a row
export const SHOTS: Schema = {
  table: "ShotArchive",
  sheet: "Shot archive",
  key: "shotKey",
  columns: [
    column("shotKey", "Shot key", "text", "", "name of this row; never used twice"),
    column("session", "Session", "text", "", "as in the Ledger"),
    column("build", "Build", "text", "", "the build's name"),
    column("keep", "Keep", "truth", "", "whether the shot counts"),
    column("time", "Time", "text", "", "when it was hit, as the table says it"),
    ...METRICS.map(({ key, label, unit, decimals, meaning }) =>
      column(key, withUnit(label, unit), "number", unit, meaning, decimals)),
  ],
};

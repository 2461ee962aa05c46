/**
 * The things a launch monitor measures of a shot, one line each: the vocabulary that the reader, the statistics,
 * the sheets and the pane share. Figures are kept in `unit` throughout; `metric` names the unit shown to those who
 * think in metres. Signs: right of the target and up are positive, for left-handed players too.
 *
 * `least` and `most` bound what a golf shot can plausibly be (common practice, no source); a figure outside is
 * flagged, never changed. `zero: false` marks what cannot be 0, so that a 0 there is a blank in disguise.
 */
export type MetricKey =
  | "clubSpeed"
  | "attack"
  | "path"
  | "face"
  | "faceToPath"
  | "dynamicLoft"
  | "spinLoft"
  | "strikeX"
  | "strikeY"
  | "ballSpeed"
  | "smash"
  | "launch"
  | "direction"
  | "spin"
  | "spinAxis"
  | "backspin"
  | "sidespin"
  | "height"
  | "landingAngle"
  | "flightTime"
  | "carry"
  | "total"
  | "offline";

/** Units as they are named in `--json` and on sheets. */
export type Unit = "mph" | "m/s" | "km/h" | "yd" | "m" | "ft" | "degrees" | "rpm" | "s" | "mm" | "in" | "";

/** The part of a shot that a metric tells of; sheets and pane show metrics in these groups. */
export type MetricGroup = "delivery" | "launch" | "flight" | "group";

/** What is known of one measured thing, for every place that reads or shows it. */
export interface Metric {
  readonly key: MetricKey;
  /** As a column heading on a sheet. */
  readonly label: string;
  readonly group: MetricGroup;
  readonly unit: Unit;
  readonly metric: Unit;
  /** Decimals shown; launch monitors carry no more. */
  readonly decimals: number;
  readonly least: number;
  readonly most: number;
  readonly zero: boolean;
  /** A plain line for a player who has never met the word. */
  readonly meaning: string;
}

const row = (
  key: MetricKey,
  label: string,
  group: MetricGroup,
  unit: Unit,
  metric: Unit,
  decimals: number,
  least: number,
  most: number,
  zero: boolean,
  meaning: string,
): Metric => ({ key, label, group, unit, metric, decimals, least, most, zero, meaning });

// biome-ignore format: a table reads best with a line a row
export const METRICS: readonly Metric[] = [
  row("clubSpeed", "Club speed", "delivery", "mph", "m/s", 1, 20, 160, false, "how fast the head moves just before the ball"),
  row("attack", "Attack angle", "delivery", "degrees", "degrees", 1, -20, 20, true, "whether the head moves down (minus) or up at the ball"),
  row("path", "Club path", "delivery", "degrees", "degrees", 1, -30, 30, true, "where the head moves: right (plus) or left of the target"),
  row("face", "Face angle", "delivery", "degrees", "degrees", 1, -30, 30, true, "where the face looks: right (plus) or left of the target"),
  row("faceToPath", "Face to path", "delivery", "degrees", "degrees", 1, -30, 30, true, "face angle less club path; it bends the ball"),
  row("dynamicLoft", "Dynamic loft", "delivery", "degrees", "degrees", 1, -5, 75, true, "the loft the face really shows the ball"),
  row("spinLoft", "Spin loft", "delivery", "degrees", "degrees", 1, -5, 90, true, "the angle between where the face looks and where the head moves; more of it, more spin"),
  row("strikeX", "Strike across", "delivery", "mm", "mm", 0, -60, 60, true, "where on the face: toe (plus) or heel"),
  row("strikeY", "Strike height", "delivery", "mm", "mm", 0, -40, 40, true, "where on the face: high (plus) or low"),
  row("ballSpeed", "Ball speed", "launch", "mph", "m/s", 1, 15, 230, false, "how fast the ball leaves"),
  row("smash", "Smash factor", "launch", "", "", 2, 0.5, 1.6, false, "ball speed over club speed: how much of the swing reached the ball"),
  row("launch", "Launch angle", "launch", "degrees", "degrees", 1, -10, 70, true, "how steeply the ball starts"),
  row("direction", "Launch direction", "launch", "degrees", "degrees", 1, -45, 45, true, "where the ball starts: right (plus) or left of the target"),
  row("spin", "Spin rate", "launch", "rpm", "rpm", 0, 200, 15000, false, "how fast the ball turns; more lifts it and stops it sooner"),
  row("spinAxis", "Spin axis", "launch", "degrees", "degrees", 1, -90, 90, true, "how far the spin leans: right (plus) or left; it curves the ball"),
  row("backspin", "Backspin", "launch", "rpm", "rpm", 0, -2000, 15000, false, "the part of the spin that lifts"),
  row("sidespin", "Sidespin", "launch", "rpm", "rpm", 0, -8000, 8000, true, "the part of the spin that curves the ball"),
  row("height", "Peak height", "flight", "ft", "m", 0, 0.5, 250, false, "the highest point of the flight"),
  row("landingAngle", "Landing angle", "flight", "degrees", "degrees", 1, 0, 90, false, "how steeply the ball comes down; steeper stops sooner"),
  row("flightTime", "Flight time", "flight", "s", "s", 1, 0.2, 12, false, "how long the ball is in the air"),
  row("carry", "Carry", "flight", "yd", "m", 1, 1, 400, false, "how far the ball flies before it lands"),
  row("total", "Total", "flight", "yd", "m", 1, 1, 450, false, "carry and roll together"),
  row("offline", "Offline", "group", "yd", "m", 1, -150, 150, true, "how far right (plus) or left of the target the ball lands"),
];

const BY_KEY = new Map(METRICS.map((metric) => [metric.key, metric]));

/** The line of the table for a key. */
export function metricOf(key: MetricKey): Metric {
  return BY_KEY.get(key)!;
}

import type { MetricKey } from "../shots/metrics.ts";
import type { ClubKind } from "./club-kind.ts";
import type { Window } from "./desirability.ts";

/** What the flight of a club should be, metric by metric, in the units kept inside. The fitter may change each. */
export type TargetWindows = Readonly<Partial<Record<MetricKey, Window>>>;

/** The metrics that have a window, in the order they are shown. */
export const WINDOW_METRICS = [
  "launch",
  "spin",
  "height",
  "landingAngle",
] as const satisfies readonly MetricKey[];

/** Club speeds, mph, between which a player swings a club of this kind at middling speed. */
type Row = readonly [
  slow: number,
  fast: number,
  launch: readonly [number, number],
  spin: readonly [number, number],
  height: readonly [number, number],
  landing: readonly [number, number],
];

/** Trade defaults for a player of middling speed. Common practice, no source; a shop changes them to its own. */
// biome-ignore format: a table reads best with a line a row
const DEFAULTS: Readonly<Record<ClubKind, Row>> = {
  driver:       [90, 105, [11.5, 15.5], [2000, 2900], [75, 110], [34, 42]],
  fairway:      [85, 100, [10.5, 15.5], [3000, 4300], [65, 105], [37, 46]],
  hybrid:       [82, 96,  [11.5, 17],   [3600, 5200], [65, 105], [40, 48]],
  "long iron":  [78, 92,  [11.5, 16.5], [4200, 5800], [65, 105], [42, 50]],
  "mid iron":   [74, 88,  [15, 20.5],   [5500, 7500], [72, 108], [44, 52]],
  "short iron": [70, 84,  [20, 27],     [7000, 9500], [72, 110], [46, 54]],
  wedge:        [64, 80,  [24, 34],     [8000, 11000],[60, 105], [48, 57]],
};

/** A slower swing wants more launch and gets less height; a faster one the other way. Common practice, no source. */
const SLOWER = { launch: 1.5, height: -15, landing: -2 };
const FASTER = { launch: -1, height: 12, landing: 1 };

/** How far outside a window a figure is worth nothing. Common practice, no source. */
const MARGINS = { launch: 5, spin: 2000, height: 35, landing: 9 };

/** The trade's usual windows for a kind of club at a club speed in mph; NaN counts as middling. */
export function usualWindows(kind: ClubKind, clubSpeed: number): TargetWindows {
  const [slow, fast, launch, spin, height, landing] = DEFAULTS[kind];
  const shift = clubSpeed < slow ? SLOWER : clubSpeed > fast ? FASTER : { launch: 0, height: 0, landing: 0 };
  const window = ([from, to]: readonly [number, number], by: number, margin: number): Window => ({
    from: from + by,
    to: to + by,
    margin,
  });
  return {
    launch: window(launch, shift.launch, MARGINS.launch),
    spin: window(spin, 0, MARGINS.spin),
    height: window(height, shift.height, MARGINS.height),
    landingAngle: window(landing, shift.landing, MARGINS.landing),
  };
}

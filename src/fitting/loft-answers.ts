import { mean } from "simple-statistics";
import { UNIT_SIZES } from "../flight/cells/unit-sizes.ts";
import { type LoftFigure, loftChange, type Ranged } from "../flight/uses/loft-change.ts";
import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import { displayUnit } from "../shots/unit-set.ts";
import { factor } from "../units/factor.ts";
import { buildValues } from "./build-values.ts";
import { meanStrike } from "./mean-flight.ts";
import type { Session } from "./session.ts";
import { sessionAir } from "./session-air.ts";
import { sessionModel } from "./session-calibration.ts";

/** What a loft change does to a build's mean shot, in mph, degrees, rpm, ft and yd, and in words. */
export interface LoftAnswers {
  readonly build: string;
  /** Degrees; plus is weaker. */
  readonly delta: number;
  readonly change: Readonly<Partial<Record<MetricKey, Ranged>>>;
  readonly words: readonly string[];
}

/** What is told, in the order it is told, with the size of its unit in the SI. */
const TOLD = [
  ["launch", 1],
  ["ballSpeed", UNIT_SIZES.mph],
  ["spin", 1],
  ["height", UNIT_SIZES.ft],
  ["landingAngle", 1],
  ["carry", UNIT_SIZES.yd],
] as const satisfies readonly (readonly [LoftFigure & MetricKey, number])[];

/**
 * Answers "what if it were two degrees weaker?" for a build: what its mean strike would do with the loft bent or chosen
 * `delta` degrees weaker (plus) or stronger (minus), the swing left as it was. The limits in brackets span what is assumed
 * of the strike (`loftChange`), not the spread of shots.
 */
export function loftAnswers(session: Session, build: string, delta: number): Outcome<LoftAnswers> {
  const air = sessionAir(session.air);
  if (isProblem(air)) return air;
  const strike = meanStrike(session, build);
  if (!strike) return unavailable(`${build} has no kept shot with ball speed, launch angle and spin.`);
  const carries = buildValues(session.table, build, "carry");
  const carry = carries.length === 0 ? Number.NaN : mean(carries) * UNIT_SIZES.yd;
  const found = loftChange({ strike, carry }, delta, air, sessionModel(session));
  if (isProblem(found)) return found;
  const change = Object.fromEntries(
    TOLD.map(([key, size]) => {
      const { value, low, high } = found.change[key];
      return [key, { value: value / size, low: low / size, high: high / size }];
    }),
  ) as Record<(typeof TOLD)[number][0], Ranged>;
  const degrees = `${Math.abs(delta)} ${Math.abs(delta) === 1 ? "degree" : "degrees"}`;
  const told = TOLD.map(([key]) => inWords(session, key, change[key]));
  const words = [
    `${build}, ${degrees} ${delta < 0 ? "stronger" : "weaker"}: ${told.join("; ")}.`,
    "The ranges span what is assumed of the strike; the swing is taken to stay as it was. Hit it before you bend the set.",
  ];
  return { build, delta, change, words };
}

/** "carry 5 yd less (4 to 6)"; "spin about the same" where both limits round to nothing. */
function inWords(session: Session, key: MetricKey, { value, low, high }: Ranged): string {
  const metric = metricOf(key);
  const unit = displayUnit(metric, session.units);
  const by = factor(metric.unit, unit);
  const shown = (figure: number) => (isProblem(by) ? figure : (figure * by.times) / by.over);
  const label = metric.label.toLowerCase();
  const decimals = key === "carry" || key === "height" || key === "spin" ? 0 : 1;
  const step = key === "spin" ? 10 : 10 ** -decimals;
  const text = (one: number) => (Math.round(shown(one) / step) * step).toFixed(decimals);
  const [least, most] = value < 0 ? [-high, -low] : [low, high];
  if (Number(text(least)) === 0 && Number(text(most)) === 0) return `${label} about the same`;
  const size = Math.abs(value);
  const range = text(least) === text(most) ? "" : ` (${text(least)} to ${text(most)})`;
  return `${label} ${text(size)} ${unit} ${value < 0 ? "less" : "more"}${range}`;
}

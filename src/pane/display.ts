import { type MetricKey, metricOf } from "../shots/metrics.ts";
import { showing } from "../shots/showing.ts";
import { displayUnit, type UnitSet } from "../shots/unit-set.ts";
import type { Figures } from "./figures.ts";

/** How figures of one metric are shown: what is made of the kept figure, its decimals, its unit. */
export interface Display {
  readonly label: string;
  readonly unit: string;
  readonly decimals: number;
  readonly value: (kept: number) => number;
  /** The figure alone: `161.6`. */
  readonly plain: (kept: number) => string;
  /** With its unit: `161.6 yd`. */
  readonly full: (kept: number) => string;
  /** The same of a figure that is in the unit shown already. */
  readonly shown: (value: number) => string;
}

/** How a metric is shown in the units and the writing of this place. */
export function displayOf(key: MetricKey, units: UnitSet, figures: Figures): Display {
  const metric = metricOf(key);
  const value = showing(metric, units);
  const unit = displayUnit(metric, units).replace("degrees", "\u00b0");
  const plain = (kept: number) => figures.show(value(kept), metric.decimals);
  const shown = (value: number) => figures.show(value, metric.decimals) + unitTail(unit);
  return {
    label: metric.label,
    unit,
    decimals: metric.decimals,
    value,
    plain,
    full: (kept) => shown(value(kept)),
    shown,
  };
}

/** A unit as it follows a figure: a degree sign at once, anything else after a narrow space. */
export function unitTail(unit: string): string {
  return unit === "" || unit === "\u00b0" ? unit : `\u202f${unit}`;
}

/** A side in words: "4.5 yd right", "on line". */
export function sideOf(display: Display, kept: number): string {
  const shown = display.value(kept);
  if (Math.abs(shown) < 0.5 * 10 ** -display.decimals) return "on line";
  return `${display.full(Math.abs(kept))} ${shown > 0 ? "right" : "left"}`;
}

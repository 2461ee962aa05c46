import type { Session } from "../fitting/session.ts";
import { type Metric, type MetricKey, metricOf } from "../shots/metrics.ts";
import { showing } from "../shots/showing.ts";
import { displayUnit, type UnitSet } from "../shots/unit-set.ts";

/**
 * The session with every figure in the units that are shown, so that what a sheet holds is what a person reads and
 * formulas need no conversions. In yards and miles an hour nothing changes.
 */
export function displaySession(session: Session): Session {
  if (session.units === "us") return session;
  const values = new Map<MetricKey, Float64Array>();
  for (const [key, column] of session.table.values) {
    const shown = showing(metricOf(key), session.units);
    values.set(key, column.map(shown));
  }
  return { ...session, table: { ...session.table, values } };
}

/** A column heading with its unit: "Carry (yd)". */
export function headingOf(metric: Metric, units: UnitSet): string {
  const unit = unitText(metric, units);
  return unit === "" ? metric.label : `${metric.label} (${unit})`;
}

/** A unit as it stands beside figures: degrees as a sign. */
export function unitText(metric: Metric, units: UnitSet): string {
  const unit = displayUnit(metric, units);
  return unit === "degrees" ? "°" : unit;
}

/** Decimals that the figures carry, as a number format. */
export function numberFormat(decimals: number, signed = false): string {
  const plain = decimals === 0 ? "0" : `0.${"0".repeat(decimals)}`;
  return signed ? `+${plain};-${plain};${plain}` : plain;
}

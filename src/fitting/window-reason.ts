import { isProblem } from "../outcome/problem.ts";
import { metricOf } from "../shots/metrics.ts";
import { displayUnit } from "../shots/unit-set.ts";
import { convert } from "../units/convert.ts";
import { buildValues } from "./build-values.ts";
import type { Session } from "./session.ts";
import { WINDOW_METRICS } from "./target-windows.ts";

/** The target window in which one build stays ahead of another by most, as a sentence; none where it is in none. */
export function windowReason(session: Session, from: string, to: string): string[] {
  const found = WINDOW_METRICS.flatMap((key) => {
    const window = session.windows[key];
    const [before, after] = [from, to].map((name) => buildValues(session.table, name, key));
    if (!window || before!.length === 0 || after!.length === 0) return [];
    const inside = (values: readonly number[]) =>
      values.filter((value) => value >= window.from && value <= window.to).length;
    const [was, is] = [inside(before!), inside(after!)];
    const ahead = is / after!.length - was / before!.length;
    return [{ key, window, was, is, of: after!.length, ofBefore: before!.length, ahead }];
  });
  const [best] = found.sort((a, b) => b.ahead - a.ahead);
  if (!best || best.ahead <= 0) return [];
  const { key, window, was, is, of, ofBefore } = best;
  const { label, meaning } = metricOf(key);
  const unit = displayUnit(metricOf(key), session.units);
  const limits = [window.from, window.to].map((limit) => {
    const shown = convert(limit, metricOf(key).unit, unit);
    return isProblem(shown) ? limit : Number(shown.toFixed(1));
  });
  return [
    `${label} (${meaning}) lay between ${limits[0]} and ${limits[1]} ${unit}, which suits this club, in ${is} of ${of} shots with ${to}, and in ${was} of ${ofBefore} with ${from}.`,
  ];
}

import { listWords } from "./list-words.ts";
import type { Goal, Session } from "./session.ts";
import { WINDOW_METRICS } from "./target-windows.ts";

/**
 * What a session was judged by, as far as its table measured it: a verdict on "distance and line" must not speak of
 * flight where no launch, spin, height or landing angle was in the table.
 *
 * @example goalMeasured(session, "overall") // "distance, line and flight together"
 */
export function goalMeasured({ table, windows }: Session, goal: Goal): string {
  if (goal !== "overall") return SINGLE[goal];
  const flight = WINDOW_METRICS.some((key) => windows[key] && table.values.has(key));
  const parts = [
    ...(table.values.has("carry") ? ["distance"] : []),
    ...(table.values.has("offline") ? ["line"] : []),
    ...(flight ? ["flight"] : []),
  ];
  return parts.length > 1 ? `${listWords(parts)} together` : parts.join("");
}

const SINGLE: Readonly<Record<Exclude<Goal, "overall">, string>> = {
  carry: "a long carry",
  tight: "a tight group",
  window: "flight",
};

import type { OutlierProposal } from "../shots/screening.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import { displayOf } from "./display.ts";
import type { Figures } from "./figures.ts";

/** Beside each shot that lies far from its build's others, what is far and which way. By place in the table. */
export function doubtsOf(
  far: readonly OutlierProposal[],
  units: UnitSet,
  figures: Figures,
): Map<number, string> {
  const doubts = new Map<number, string[]>();
  for (const { index, key, value, score } of far) {
    const display = displayOf(key, units, figures);
    const text = `${display.label.toLowerCase()} ${display.full(value)} is far ${score > 0 ? "above" : "below"}`;
    doubts.set(index, [...(doubts.get(index) ?? []), text]);
  }
  return new Map(
    [...doubts].map(([index, texts]) => [index, `Far from the rest: ${texts.join(", ")}. Your choice.`]),
  );
}

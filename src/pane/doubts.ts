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
  const doubts = new Map<number, { above: string[]; below: string[] }>();
  for (const { index, key, value, score } of far) {
    const display = displayOf(key, units, figures);
    const doubt = doubts.get(index) ?? { above: [], below: [] };
    doubt[score > 0 ? "above" : "below"].push(`${display.label.toLowerCase()} ${display.full(value)}`);
    doubts.set(index, doubt);
  }
  return new Map([...doubts].map(([index, { above, below }]) => [index, sentence(above, below)]));
}

function sentence(above: readonly string[], below: readonly string[]): string {
  const parts = [
    ...(below.length > 0 ? [`far below the rest in ${below.join(", ")}`] : []),
    ...(above.length > 0 ? [`far above the rest in ${above.join(", ")}`] : []),
  ];
  const text = parts.join("; ");
  return `${text[0]!.toUpperCase()}${text.slice(1)}. Your choice.`;
}

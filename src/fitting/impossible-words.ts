import { METRICS } from "../shots/metrics.ts";
import { listWords } from "./list-words.ts";
import { shownFigure } from "./plain-sentences.ts";
import type { Session } from "./session.ts";

/** More figures than this make no sentence. */
const MOST_NAMED = 3;

/**
 * A sentence where counted shots hold figures that no shot can have, such as a carry whose decimal mark was lost. They
 * are left as they are, as every figure is, but averages that hold them must not be read as if nothing were wrong.
 */
export function impossibleWords({ table, units }: Session): string[] {
  const found: string[] = [];
  for (const { key, label, least, most } of METRICS) {
    const column = table.values.get(key) ?? [];
    for (let i = 0; i < column.length; i++) {
      const value = column[i]!;
      if (!table.keep[i] || !(value < least || value > most)) continue;
      found.push(`${label.toLowerCase()} ${shownFigure(value, key, units)} in row ${table.row[i]}`);
    }
  }
  if (found.length === 0) return [];
  const others = found.length - MOST_NAMED;
  const named = [...found.slice(0, MOST_NAMED), ...(others > 0 ? [`${others} more`] : [])];
  return [
    `No shot can have this: ${listWords(named)}. Averages, limits and chances count it until it is put right or unticked.`,
  ];
}

/** The same for a player, who cannot put a figure right but should not take the page for sure. */
export function impossibleForPlayer(session: Session): string[] {
  return impossibleWords(session).length === 0
    ? []
    : ["A figure among these shots cannot be right. Ask for it to be put right before you go by this page."];
}

import type { Mutant } from "./mutate.ts";

/**
 * The share in percent of the mutants that tests noticed, of those that were tried. One that ran out of time counts as
 * noticed, one that no test reaches does not. Whatever was left out counts on neither side; a file of nothing else, such
 * as a table, has nothing missed.
 */
export function scoreOf(mutants: readonly Pick<Mutant, "status">[]): { score: number; counts: string } {
  const counts = new Map<string, number>();
  for (const { status } of mutants) counts.set(status, (counts.get(status) ?? 0) + 1);
  const sum = (...names: string[]) => names.reduce((all, name) => all + (counts.get(name) ?? 0), 0);
  const noticed = sum("Killed", "Timeout");
  const tried = noticed + sum("Survived", "NoCoverage");
  return {
    score: tried === 0 ? 100 : (100 * noticed) / tried,
    counts: [...counts]
      .map(([name, count]) => `${count} ${name.toLowerCase()}`)
      .sort()
      .join(", "),
  };
}

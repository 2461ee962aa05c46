import { isProblem } from "../outcome/problem.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import { bandsOf } from "./bands.ts";
import type { Row } from "./cell.ts";
import { type NeverWon, neverWon } from "./never-won.ts";
import { MAIN_METRICS } from "./schema.ts";
import { sessionsOf } from "./sessions-of.ts";
import { type VerdictsHeld, verdictsHeld } from "./verdicts-held.ts";
import { type WeightAcrossPlayers, weightAcrossPlayers } from "./weight-across-players.ts";

/** What the shop's data say, and what they cannot. */
export interface ShopFindings {
  /** What its figures are to be shown in; they are kept in yards, miles an hour and inches throughout. */
  readonly units: UnitSet;
  readonly sessions: number;
  readonly players: number;
  readonly weight: readonly (WeightAcrossPlayers & { readonly band: string })[];
  readonly held: VerdictsHeld | null;
  readonly neverWon: readonly NeverWon[];
  /** Sentences: what is missing for what could not be said. */
  readonly missing: readonly string[];
  readonly warnings: readonly string[];
}

/** True of any shop's data, however many there are. */
export const SHOP_WARNINGS: readonly string[] = [
  "Players were not handed shafts by lot: fitters gave heavy ones to those they thought would do well with them. What goes with weight here need not come from it.",
  "Shafts that differ in weight differ in flex, profile and length as well, and often in the head they were glued to.",
  "Only players who came to be fitted are in here, and only those who came back tell whether a verdict held.",
  "A verdict holding means that the same build won again, not that it was worth what it cost.",
  "With ten metrics and eight bands, some limits miss 0 by chance alone: take a single line as something to look into.",
  "A build that never won may have been tried with players it was not meant for.",
];

/** Looks through the whole ledger. Yields the share done: of 25,000 rows it takes a second or two. */
export function* shopFindings(rows: readonly Row[], units: UnitSet = "us"): Generator<number, ShopFindings> {
  const sessions = sessionsOf(rows);
  const missing = new Set<string>();
  const weight: (WeightAcrossPlayers & { readonly band: string })[] = [];
  const bands = [{ name: "all players", rows }, ...bandsOf(rows, units)];
  for (const [place, { name, rows: own }] of bands.entries()) {
    for (const [i, metric] of MAIN_METRICS.entries()) {
      yield (place + i / MAIN_METRICS.length) / bands.length;
      const found = weightAcrossPlayers(own, metric);
      if (!isProblem(found)) weight.push({ ...found, band: name });
      else if (own.length > 0 && metric === "carry") missing.add(`Shaft weight, ${name}: ${found.message}`);
    }
  }
  const held = verdictsHeld(sessions);
  if (isProblem(held)) missing.add(held.message);
  if (rows.length > 0 && rows.every((row) => (row.tempo ?? null) === null))
    missing.add("Tempo is not in the ledger.");
  return {
    units,
    sessions: sessions.length,
    players: new Set(sessions.map(({ player }) => player).filter((player) => player !== "")).size,
    weight,
    held: isProblem(held) ? null : held,
    neverWon: neverWon(sessions),
    missing: [...missing],
    warnings: SHOP_WARNINGS,
  };
}

import { figureIn, type Row, textIn } from "./cell.ts";
import { playerKey } from "./player-key.ts";

/** A part of the ledger's rows by what a player is like. */
export interface Band {
  readonly name: string;
  readonly rows: readonly Row[];
}

interface Limits {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/** By club speed with any club, mph (common practice, no source). */
const SPEEDS: readonly Limits[] = [
  { name: "club speed below 75 mph", from: 0, to: 75 },
  { name: "club speed 75 to 90 mph", from: 75, to: 90 },
  { name: "club speed 90 to 105 mph", from: 90, to: 105 },
  { name: "club speed from 105 mph", from: 105, to: Number.POSITIVE_INFINITY },
];

/** By how long the backswing takes against the downswing, where that is known (common practice, no source). */
const TEMPOS: readonly Limits[] = [
  { name: "tempo below 2.5 to 1", from: 0.1, to: 2.5 },
  { name: "tempo 2.5 to 3.5 to 1", from: 2.5, to: 3.5 },
  { name: "tempo from 3.5 to 1", from: 3.5, to: Number.POSITIVE_INFINITY },
];

/**
 * The ledger's rows by bands of club speed and of tempo. A band is chosen by the player's mean with that kind of club
 * over all builds and sessions, never by the row's own figure: heavy shafts cost club speed, so that rows taken by their
 * own would be those in which a shaft did what is asked about (selection on the outcome). All rows of a player with a
 * kind of club are in one band of each sort; rows of which nobody knows it are in none.
 */
export function bandsOf(rows: readonly Row[]): Band[] {
  const sorts = [
    { limits: SPEEDS, level: levels(rows, "clubSpeedMean") },
    { limits: TEMPOS, level: levels(rows, "tempo") },
  ];
  return sorts.flatMap(({ limits, level }) =>
    limits.map(({ name, from, to }) => ({
      name,
      rows: rows.filter((row) => {
        const figure = level.get(groupOf(row));
        return figure !== undefined && figure >= from && figure < to;
      }),
    })),
  );
}

/** A row without a player stands for itself. */
const groupOf = (row: Row) => {
  const player = playerKey(textIn(row, "player"));
  return player === "" ? row : `${player}|${textIn(row, "kind")}`;
};

/** Means over all rows of a player with a kind of club, each row counted by its shots. */
function levels(rows: readonly Row[], key: string): Map<string | Row, number> {
  const sums = new Map<string | Row, { shots: number; sum: number }>();
  for (const row of rows) {
    const figure = figureIn(row, key);
    if (figure === null) continue;
    const shots = Math.max(1, figureIn(row, "kept") ?? 1);
    const own = sums.get(groupOf(row)) ?? { shots: 0, sum: 0 };
    sums.set(groupOf(row), { shots: own.shots + shots, sum: own.sum + shots * figure });
  }
  return new Map([...sums].map(([group, { shots, sum }]) => [group, sum / shots]));
}

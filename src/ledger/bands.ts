import { metricOf } from "../shots/metrics.ts";
import { showing } from "../shots/showing.ts";
import { displayUnit, type UnitSet } from "../shots/unit-set.ts";
import { figureIn, type Row, textIn } from "./cell.ts";
import { playerKey } from "./player-key.ts";

/** A part of the ledger's rows by what a player is like. */
export interface Band {
  readonly name: string;
  readonly rows: readonly Row[];
}

/** Between which club speeds the bands part, with any club, mph (common practice, no source). */
const SPEEDS = [75, 90, 105];

/** By how long the backswing takes against the downswing, where that is known (common practice, no source). */
const TEMPOS = [2.5, 3.5];

/**
 * The ledger's rows by bands of club speed and of tempo. A band is chosen by the player's mean with that kind of club
 * over all builds and sessions, never by the row's own figure: heavy shafts cost club speed, so that rows taken by their
 * own would be those in which a shaft did what is asked about (selection on the outcome). All rows of a player with a
 * kind of club are in one band of each sort; rows of which nobody knows it are in none.
 */
export function bandsOf(rows: readonly Row[], units: UnitSet = "us"): Band[] {
  const speed = metricOf("clubSpeed");
  const shown = showing(speed, units);
  const speeds = (mph: number) => `${Math.round(shown(mph))}`;
  return [
    ...banded(rows, "clubSpeedMean", SPEEDS, "club speed", speeds, displayUnit(speed, units)),
    ...banded(rows, "tempo", TEMPOS, "tempo", String, "to 1"),
  ];
}

function banded(
  rows: readonly Row[],
  key: string,
  parts: readonly number[],
  what: string,
  said: (figure: number) => string,
  unit: string,
): Band[] {
  const level = levels(rows, key);
  return [0, ...parts].map((from, place) => {
    const to = parts[place];
    const where =
      to === undefined
        ? `from ${said(from)}`
        : place === 0
          ? `below ${said(to)}`
          : `${said(from)} to ${said(to)}`;
    return {
      name: `${what} ${where} ${unit}`,
      rows: rows.filter((row) => {
        const figure = level.get(groupOf(row));
        return figure !== undefined && figure >= from && figure < (to ?? Number.POSITIVE_INFINITY);
      }),
    };
  });
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
    // A 0 is a blank in disguise.
    if (figure === null || figure <= 0) continue;
    const shots = Math.max(1, figureIn(row, "kept") ?? 1);
    const own = sums.get(groupOf(row)) ?? { shots: 0, sum: 0 };
    sums.set(groupOf(row), { shots: own.shots + shots, sum: own.sum + shots * figure });
  }
  return new Map([...sums].map(([group, { shots, sum }]) => [group, sum / shots]));
}

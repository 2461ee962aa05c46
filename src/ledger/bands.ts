import { figureIn, type Row } from "./cell.ts";

/** A part of the ledger's rows by what a player is like. */
export interface Band {
  readonly name: string;
  readonly holds: (row: Row) => boolean;
}

const between = (key: string, from: number, to: number) => (row: Row) => {
  const figure = figureIn(row, key);
  return figure !== null && figure >= from && figure < to;
};

/** By club speed with any club, mph (common practice, no source). */
export const SPEED_BANDS: readonly Band[] = [
  { name: "club speed below 75 mph", holds: between("clubSpeedMean", 0, 75) },
  { name: "club speed 75 to 90 mph", holds: between("clubSpeedMean", 75, 90) },
  { name: "club speed 90 to 105 mph", holds: between("clubSpeedMean", 90, 105) },
  { name: "club speed from 105 mph", holds: between("clubSpeedMean", 105, Number.POSITIVE_INFINITY) },
];

/** By how long the backswing takes against the downswing, where that is known (common practice, no source). */
export const TEMPO_BANDS: readonly Band[] = [
  { name: "tempo below 2.5 to 1", holds: between("tempo", 0.1, 2.5) },
  { name: "tempo 2.5 to 3.5 to 1", holds: between("tempo", 2.5, 3.5) },
  { name: "tempo from 3.5 to 1", holds: between("tempo", 3.5, Number.POSITIVE_INFINITY) },
];

import { isProblem } from "../../outcome/problem.ts";
import type { Air } from "../air/air.ts";
import type { FlightOptions } from "../trajectory/fly-ball.ts";
import type { Strike } from "../trajectory/strike.ts";
import { normalizeCarry } from "./normalize-carry.ts";

/** The shots to bring to reference air, told by their place from 0 to `size` less 1. */
export interface NormalizeTable {
  readonly size: number;
  /** Measured carry of a shot, in any unit of length; NaN where there is none. */
  readonly carry: ArrayLike<number>;
  readonly strike: (index: number) => Strike;
  readonly air: Air;
  readonly reference?: Air;
  readonly options?: FlightOptions;
  /** Shots between two reports of progress; 500 hold a page up for a few milliseconds. */
  readonly slice?: number;
}

/**
 * Normalises the carries of a long table in slices. Yields the share done after each slice, so that the caller can show
 * it and let the page breathe, and returns the carries at last: NaN where the shot has none or cannot be flown.
 *
 * @example
 * const work = normalizeTable(table);
 * for (let turn = work.next(); !turn.done; turn = work.next()) await show(turn.value);
 */
export function* normalizeTable(table: NormalizeTable): Generator<number, Float64Array> {
  const { size, carry, strike, air, reference, options, slice = 500 } = table;
  const normalized = new Float64Array(size);
  for (let index = 0; index < size; index += 1) {
    // A carry that is missing is a problem too.
    const answer = normalizeCarry(carry[index]!, strike(index), air, reference, options);
    normalized[index] = isProblem(answer) ? Number.NaN : answer;
    if ((index + 1) % slice === 0) yield (index + 1) / size;
  }
  return normalized;
}

import type { Outcome } from "../outcome/problem.ts";
import { partOf } from "../slices/part-of.ts";
import { noTable } from "./no-table.ts";
import type { ReadOptions } from "./read-options.ts";
import { readRecords } from "./read-records.ts";
import type { ShotTable } from "./shot-table.ts";
import { sniffDelimiter } from "./sniff-delimiter.ts";
import { splitInSlices } from "./split-in-slices.ts";
import { plainLines } from "./split-text.ts";

/**
 * What `readShots` answers, with the share done told after each few milliseconds of work: for long tables, so that
 * whoever waits sees how far it is and a page that has no worker stays alive.
 */
export function* readInSlices(
  text: string,
  options: ReadOptions = {},
): Generator<number, Outcome<ShotTable>> {
  const plain = plainLines(text);
  const none = noTable(plain);
  if (none) return none;
  const delimiter = options.delimiter || sniffDelimiter(plain);
  // Cutting takes about as long as reading.
  const records = yield* partOf(splitInSlices(plain, delimiter), 0, 0.5);
  return yield* partOf(readRecords(records, delimiter, options), 0.5, 1);
}

import type { Outcome } from "../outcome/problem.ts";
import { noTable } from "./no-table.ts";
import type { ReadOptions } from "./read-options.ts";
import { readRecords } from "./read-records.ts";
import type { ShotTable } from "./shot-table.ts";
import { sniffDelimiter } from "./sniff-delimiter.ts";
import { plainLines, splitText } from "./split-text.ts";

/**
 * Reads a table of shots as it was copied from a spreadsheet or a text file. It finds the delimiter, the decimal
 * mark, the header, the units and the builds by itself and says what it found; `options` puts right what it took for
 * something else. No figure is dropped silently: each record of the text is a shot or stands in `skipped`, each cell
 * that was not understood in `problems`.
 *
 * Rows count the lines of the text from 1; a record with a line break inside a quoted cell counts by its first line.
 *
 * A problem instead of a table only where there is no shot at all.
 */
export function readShots(text: string, options: ReadOptions = {}): Outcome<ShotTable> {
  const plain = plainLines(text);
  const none = noTable(plain);
  if (none) return none;
  const delimiter = options.delimiter || sniffDelimiter(plain);
  const work = readRecords(splitText(plain, delimiter), delimiter, options);
  let turn = work.next();
  while (!turn.done) turn = work.next();
  return turn.value;
}

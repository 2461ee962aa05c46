import Papa from "papaparse";
import { linesOf, type Records, splitText } from "./split-text.ts";

/** Between two reports, letters, or records where there are quotes: some milliseconds of work. */
const SLICE = { letters: 500_000, records: 5000 };

/**
 * Cuts a text of plain lines as `splitText` does and yields the share done now and then. A quotation mark that is never
 * closed is found at the end only; the text is then cut once more in one go.
 */
export function* splitInSlices(text: string, delimiter: string, slice = SLICE): Generator<number, Records> {
  const quoted = text.includes('"');
  const cells: string[][] = [];
  let toTheEnd = false;
  const add = (records: readonly string[][]) => {
    for (const record of records) cells.push(record);
  };
  for (let from = 0; from < text.length; ) {
    if (quoted) {
      // The parser passes over such a mark without counting it.
      if (text.charCodeAt(from) === 0xfeff) from++;
      const { data, errors, meta } = Papa.parse<string[]>(text.slice(from), {
        ...{ delimiter, newline: "\n", preview: slice.records, fastMode: false },
      });
      if (errors.some((error) => error.type === "Quotes") || meta.cursor <= 0)
        return splitText(text, delimiter);
      add(data);
      from += meta.cursor;
      toTheEnd = !meta.truncated;
    } else {
      const end = text.indexOf("\n", from + slice.letters);
      const to = end < 0 ? text.length : end + 1;
      add(splitText(text.slice(from, to), delimiter).cells as string[][]);
      from = to;
    }
    yield from / text.length;
  }
  const last = cells.at(-1);
  if (toTheEnd && last?.length === 1 && last[0] === "") cells.pop();
  return { cells, line: quoted ? linesOf(cells) : (record) => record + 1, looseQuotes: false };
}

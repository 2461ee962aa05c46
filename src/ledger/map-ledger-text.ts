import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import type { Row } from "./cell.ts";
import { foreignHeadings, readLedgerText } from "./ledger-text.ts";
import type { MappedSheet } from "./map-tracking-sheet.ts";
import { LEDGER } from "./schema.ts";

/**
 * A ledger that was exported as text, ready to be looked at before any of it is kept. Its rows have their names already,
 * so none is ever there twice; what it leaves empty says nothing, so that it takes nothing away from rows that stand in
 * this ledger. Columns of the other shop's own are named and left out.
 */
export function mapLedgerText(text: string): Outcome<MappedSheet> {
  const read = readLedgerText(text);
  if (isProblem(read)) return read;
  // A shop's own sheet may well count its lines under "Entry".
  if (!read.some(({ session, build }) => session !== null && build !== null))
    return invalid("No line of the text has an Entry, a Session and a Build, so it is no ledger.");
  const named = read.flatMap((row, place) => {
    const filled: Row = Object.fromEntries(Object.entries(row).filter(([, cell]) => cell !== null));
    return filled[LEDGER.key] === undefined
      ? []
      : [{ line: place + 2, was: String(row.entry), rows: [filled] }];
  });
  const nameless = read.flatMap((row, place) =>
    row[LEDGER.key] === null ? [{ line: place + 2, cell: String(row.build ?? ""), why: "has no Entry" }] : [],
  );
  return {
    rows: named.flatMap(({ rows }) => rows),
    preview: named,
    left: [
      ...foreignHeadings(text).map((cell) => ({
        line: 0,
        cell,
        why: "a column of their own; it is not taken along",
      })),
      ...nameless,
    ],
    assumed: [],
    columns: [],
    questions: [],
  };
}

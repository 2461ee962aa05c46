import type { MappedSheet } from "../ledger/map-tracking-sheet.ts";
import { LEDGER } from "../ledger/schema.ts";
import { figuresFor } from "./figures.ts";

/** Names that only the ledger needs, and counts that follow from others. */
const UNSEEN = /^(schema|entry|session|source|kind)$|N$/;

/** Rows as they would stand in the ledger, each beside the line it came from, all of them in a frame that scrolls. */
export function LedgerRowsTable({ preview }: Pick<MappedSheet, "preview">) {
  const figures = figuresFor();
  const rows = preview.flatMap((one) => one.rows);
  const columns = LEDGER.columns.filter(
    ({ key }) => !UNSEEN.test(key) && rows.some((row) => (row[key] ?? null) !== null),
  );
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section class="wide tall" tabIndex={0} aria-label="Rows line by line">
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Line</th>
            {columns.map(({ key, heading }) => (
              <th key={key} scope="col">
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {preview.flatMap(({ line, was, rows: became }) =>
            became.map((row) => (
              <tr key={String(row.entry)}>
                <th scope="row" title={was}>
                  {line}
                </th>
                {columns.map(({ key, decimals }) => {
                  const cell = row[key] ?? null;
                  return (
                    <td key={key}>
                      {typeof cell === "number" ? figures.plain(cell, decimals + 1) : worded(cell)}
                    </td>
                  );
                })}
              </tr>
            )),
          )}
        </tbody>
      </table>
    </section>
  );
}

const worded = (cell: string | boolean | null) => (cell === true ? "yes" : cell === false ? "no" : cell);

import type { Host } from "../hosts/host.ts";
import { codedRows } from "../ledger/coded-rows.ts";
import { ledgerText } from "../ledger/ledger-text.ts";
import { LEDGER } from "../ledger/schema.ts";
import { foreignColumns } from "../ledger/table-rows.ts";
import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { ledgerOf } from "./ledger-keeping.ts";

/** A ledger as text, ready to leave the workbook. */
export interface LedgerExport {
  readonly text: string;
  readonly rows: number;
  /** Headings of the user's own, which do not travel. */
  readonly own: readonly string[];
}

/** The workbook's whole ledger as delimited text; names as codes where there is a secret. Nothing is written. */
export async function exportLedger(host: Host, secret: string): Promise<Outcome<LedgerExport>> {
  const rows = await ledgerOf(host);
  if (isProblem(rows)) return rows;
  if (rows.length === 0) return unavailable("The ledger is empty; keep a session first.");
  const coded = secret === "" ? rows : await codedRows(rows, secret);
  if (isProblem(coded)) return coded;
  const table = await host.tableCells(LEDGER.table, []);
  const own = isProblem(table) || !table ? [] : foreignColumns(table.headings, LEDGER);
  return { text: ledgerText(coded), rows: coded.length, own };
}

/** What the pane says of an export. */
export function exportWords({ rows, own }: LedgerExport, handedOver: boolean, host: string): string {
  const left = own.length === 0 ? "" : ` Columns of your own stay here: ${own.join(", ")}.`;
  const where = handedOver
    ? `${rows} rows saved as a file.`
    : `${host[0]!.toUpperCase()}${host.slice(1)} cannot hand over a file: copy the ${rows} rows from the box below.`;
  return where + left;
}

import { readFile, writeFile } from "node:fs/promises";
import { parseArgs } from "node:util";
import type { Row } from "../../ledger/cell.ts";
import { textIn } from "../../ledger/cell.ts";
import { codedRows } from "../../ledger/coded-rows.ts";
import { ledgerParquet, readLedgerParquet } from "../../ledger/ledger-parquet.ts";
import { foreignHeadings, ledgerText, readLedgerText } from "../../ledger/ledger-text.ts";
import { playerKey } from "../../ledger/player-key.ts";
import { invalid, isProblem, type Outcome } from "../../outcome/problem.ts";
import { textOfBytes } from "../../shots/text-of-bytes.ts";
import { fileTrouble } from "./file-trouble.ts";

const USAGE = "npm run ledger -- IN.csv|IN.parquet OUT.csv|OUT.parquet [--codes SECRET] [--without PLAYER]";

process.exitCode = await main(process.argv.slice(2));

/** Turns a ledger file into another one: text or Parquet, names as codes, a player left out. */
async function main(words: readonly string[]): Promise<number> {
  const done = await convert(words).catch((error: Error) => invalid(`${error.message} Usage: ${USAGE}`));
  if (!isProblem(done)) {
    console.log(done);
    return 0;
  }
  console.error(done.message.replace(/\s+/g, " "));
  return 2;
}

async function convert(words: readonly string[]): Promise<Outcome<string>> {
  const options = { codes: { type: "string" }, without: { type: "string" } } as const;
  const { values, positionals } = parseArgs({ args: [...words], allowPositionals: true, options });
  const [from, to] = positionals;
  if (!from || !to || positionals.length > 2 || !/\.(csv|parquet)$/i.test(to))
    return invalid(`Usage: ${USAGE}`);
  const bytes = await readFile(from).catch((error) => invalid(fileTrouble("read", from, error)));
  if (isProblem(bytes)) return bytes;
  const text = /\.parquet$/i.test(from) ? null : textOfBytes(bytes);
  const read = text === null ? await readLedgerParquet(new Uint8Array(bytes)) : readLedgerText(text);
  if (isProblem(read)) return read;
  const gone = playerKey(values.without ?? "");
  const kept = gone === "" ? read : read.filter((row) => playerKey(textIn(row, "player")) !== gone);
  const rows: Outcome<Row[]> = values.codes === undefined ? kept : await codedRows(kept, values.codes);
  if (isProblem(rows)) return rows;
  const out = /\.parquet$/i.test(to) ? await ledgerParquet(rows) : ledgerText(rows);
  if (isProblem(out)) return out;
  // Never over a file that stands there.
  const refused = await writeFile(to, out, { flag: "wx" }).catch((error) => fileTrouble("write", to, error));
  if (refused) return invalid(refused);
  const own = text === null ? [] : foreignHeadings(text);
  return [
    `${rows.length} rows written to ${to}; ${read.length - rows.length} left out.`,
    ...(own.length > 0 ? [`Columns left out: ${own.join(", ")}.`] : []),
  ].join(" ");
}

import { type CellValue, formatDate, readXlsx } from "hucre";
import { invalid, type Outcome } from "../../outcome/problem.ts";

/**
 * The first visible sheet of an .xlsx file as tab-separated text, ready for the reader of shots: what someone would
 * paste who had copied all its cells. Formulas give their stored answers, days are written `yyyy-mm-dd`, and cells
 * with a tab, a quote or a line break in them stand in quotes.
 */
export async function readXlsxText(bytes: Uint8Array): Promise<Outcome<string>> {
  try {
    const { sheets } = await readXlsx(bytes, { sheets: ({ hidden, veryHidden }) => !hidden && !veryHidden });
    const rows = sheets[0]?.rows ?? [];
    if (!rows.some((row) => row.some((value) => value !== null))) {
      return invalid("The first sheet of the file is empty; a table of shots with headings is needed there.");
    }
    return rows.map((row) => row.map(cellText).join("\t")).join("\n");
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return invalid(`The file could not be read as an .xlsx workbook: ${reason}`);
  }
}

function cellText(value: CellValue): string {
  if (value === null || value === undefined) return "";
  if (value instanceof Date) return formatDate(value, hasTime(value) ? "yyyy-mm-dd hh:mm:ss" : "yyyy-mm-dd");
  const text = typeof value === "boolean" ? String(value).toUpperCase() : String(value);
  return /["\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

function hasTime(date: Date): boolean {
  return date.getTime() % 86_400_000 !== 0;
}

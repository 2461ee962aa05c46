import { type CellValue, formatDate, readXlsx } from "hucre";
import { invalid, type Outcome } from "../../outcome/problem.ts";

/**
 * The first visible sheet of an .xlsx file that suits, as tab-separated text: what someone would paste who had copied
 * all its cells; the first with anything in it where none suits, or any will do. Formulas give their stored answers,
 * days are written `yyyy-mm-dd`, and cells with a tab, a quote or a line break in them stand in quotes.
 */
export async function readXlsxText(
  bytes: Uint8Array,
  suits: (text: string) => boolean = () => true,
): Promise<Outcome<string>> {
  try {
    const { sheets } = await readXlsx(bytes, { sheets: ({ hidden, veryHidden }) => !hidden && !veryHidden });
    const texts = sheets
      .filter(({ rows }) => rows.some((row) => row.some((value) => value !== null)))
      .map(({ rows }) => rows.map((row) => row.map(cellText).join("\t")).join("\n"));
    if (texts.length === 0) {
      return invalid("All sheets of the file are empty; a table of shots with headings is needed on one.");
    }
    return texts.find(suits) ?? texts[0]!;
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return invalid(
      `The file could not be read as an .xlsx workbook (${reason}); saved again as .xlsx, or as CSV, it would do.`,
    );
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

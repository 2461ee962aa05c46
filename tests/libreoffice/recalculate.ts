import { type CellValue, dateToSerial, readXls, readXlsx, type Workbook } from "hucre";
import { convert } from "./convert.ts";

/** What cells show after LibreOffice has calculated them. An error is its text, such as `#N/A`; a day its number. */
export type Answers = readonly (readonly (string | number | boolean | null)[])[];

/**
 * Every cell of a workbook by sheet, row and column, its formulas calculated afresh by LibreOffice. It saves .xlsx
 * with 15 digits, so numbers are taken from the older binary format, which holds them whole.
 */
export async function recalculate(bytes: Uint8Array): Promise<Map<string, Answers>> {
  const workbook = await readXlsx(await convert(bytes, "xlsx"));
  const binary = await readXls(await convert(bytes, "xls"));
  return new Map(workbook.sheets.map((sheet, i) => [sheet.name, answers(sheet, binary.sheets[i])]));
}

type Sheet = Workbook["sheets"][number];

function answers(sheet: Sheet, exact: Sheet | undefined): Answers {
  return sheet.rows.map((row, r) =>
    row.map((value, c) => {
      const answer = plain(value);
      const whole = plain(exact?.rows[r]?.[c] ?? null);
      return typeof answer === "number" && typeof whole === "number" ? whole : answer;
    }),
  );
}

function plain(value: CellValue): string | number | boolean | null {
  return value instanceof Date ? dateToSerial(value) : value;
}

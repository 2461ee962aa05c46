import { headingKey } from "../../sheets/heading-key.ts";
import type { RowsSought } from "../../sheets/table-change.ts";
import { CELLS_AT_ONCE } from "./cells-at-once.ts";

/** Each text that the spreadsheet looks for goes through the column once more, so beyond this the column is read. */
const MOST_TEXTS = 200;

/**
 * Where the first row with each of the texts stands in a table, counted from 0, rising. The spreadsheet looks for them
 * by its own MATCH, so that nothing but places comes back; a column of 200,000 keys would be 5 MB.
 */
export async function findRows(
  context: Excel.RequestContext,
  whole: Excel.Range,
  headings: readonly string[],
  { heading, texts }: RowsSought,
): Promise<number[]> {
  const column = headings.findIndex((one) => headingKey(one) === headingKey(heading));
  if (column < 0 || texts.length === 0) return [];
  const places = texts.length > MOST_TEXTS ? null : await matched(context, bodyOf(whole, column), texts);
  const found = places ?? (await readThrough(context, whole, column, texts));
  return [...new Set(found)].sort((a, b) => a - b);
}

const bodyOf = (whole: Excel.Range, column: number) =>
  whole.getCell(1, column).getResizedRange(whole.rowCount - 2, 0);

/** Null where the spreadsheet took other texts for these: it does not tell capitals from small letters. */
async function matched(
  context: Excel.RequestContext,
  keys: Excel.Range,
  texts: readonly string[],
): Promise<number[] | null> {
  const answers = texts.map((text) => {
    // A tilde before what would stand for any letters.
    const answer = context.workbook.functions.match(text.replace(/[~*?]/g, "~$&"), keys, 0);
    answer.load("value,error");
    return answer;
  });
  await context.sync();
  const found = answers.flatMap(({ error, value }, i) =>
    error ? [] : [{ text: texts[i], place: value - 1, cell: keys.getCell(value - 1, 0) }],
  );
  for (const { cell } of found) cell.load("values");
  if (found.length > 0) await context.sync();
  const same = found.every(({ text, cell }) => String(cell.values[0]![0]) === text);
  return same ? found.map(({ place }) => place) : null;
}

async function readThrough(
  context: Excel.RequestContext,
  whole: Excel.Range,
  column: number,
  texts: readonly string[],
): Promise<number[]> {
  const left = new Set(texts);
  const found: number[] = [];
  for (let row = 1; row < whole.rowCount && left.size > 0; row += CELLS_AT_ONCE) {
    const count = Math.min(CELLS_AT_ONCE, whole.rowCount - row);
    const piece = whole.getCell(row, column).getResizedRange(count - 1, 0);
    piece.load("values");
    await context.sync();
    for (const [r, [value]] of piece.values.entries())
      if (left.delete(String(value))) found.push(row - 1 + r);
  }
  return found;
}

/**
 * The rows in words, the first twelve by number.
 *
 * @example rowsWords([4, 9]) // "rows 4, 9"
 */
export function rowsWords(rows: readonly number[]): string {
  const shown = rows.slice(0, 12).join(", ");
  const more = rows.length > 12 ? ` and ${rows.length - 12} more` : "";
  return `${rows.length === 1 ? "row" : "rows"} ${shown}${more}`;
}

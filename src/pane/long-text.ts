/**
 * From so many letters on a table is long, some 7,000 shots of twelve columns: it is read beside the page
 * (`long-table.tsx`), for reading it here would hold the page up.
 */
export const LONG_TEXT = 500_000;

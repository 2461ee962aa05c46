import type { SheetPlan } from "../sheets/plan.ts";
import { area, SheetDraft } from "../sheets/sheet-draft.ts";
import type { Cell, Row } from "./cell.ts";
import { columnFormat } from "./column-format.ts";
import { type Column, SCHEMA_VERSION, type Schema } from "./schema.ts";
import { cellsOf } from "./table-rows.ts";

/**
 * A sheet with one table of the ledger and nothing else on it, so that the table can grow: headings in the first row,
 * which stays in view, the form it is kept in as a note on its first heading. Columns that no row fills are left out
 * where `lean`.
 */
export function tableSheet(schema: Schema, rows: readonly Row[], name: string, lean: boolean): SheetPlan {
  const filled = (column: Column) => rows.some((row) => (row[column.key] ?? null) !== null);
  const columns = lean ? schema.columns.filter(filled) : schema.columns;
  const headings = columns.map(({ heading }) => heading);
  const draft = new SheetDraft(name);
  draft.put(0, 0, [headings], "heading");
  draft.put(
    1,
    0,
    rows.map((row) => cellsOf<Cell>(row, headings, schema, null)),
  );
  for (const [place, column] of columns.entries()) {
    const format = columnFormat(column);
    // Texts are entered as texts wherever they go; the format would only show in what the user types there.
    if (format !== "General" && format !== "@") draft.format(area(1, place, rows.length), format);
    draft.width(
      place,
      1,
      Math.min(34, Math.max(10, column.heading.length + 4, longestText(column, rows) + 2)),
    );
  }
  draft.table({ name: schema.table, area: area(0, 0, rows.length + 1, columns.length) });
  draft.note(
    0,
    0,
    `Form ${SCHEMA_VERSION}. One row a ${schema.table === "Ledger" ? "build a session" : "shot"}. ${OWN}`,
  );
  draft.freeze(1, 0);
  draft.height(0, 20);
  draft.print({ landscape: true, pagesWide: 1, pagesTall: 0, titleRows: { row: 0, rows: 1 } });
  return draft.plan();
}

/** Letters of the longest text among the first rows; the later ones look alike. */
const longestText = ({ key, type }: Column, rows: readonly Row[]) =>
  type === "text" || type === "day"
    ? rows.slice(0, 200).reduce((most, row) => Math.max(most, String(row[key] ?? "").length), 0)
    : 0;

const OWN = "Columns of your own may stand beside these, in any order; sort, filter and pivot as you like.";

import type { Session } from "../fitting/session.ts";
import { orderedMetrics } from "../shots/unit-set.ts";
import { cellName } from "./a1.ts";
import { headingOf, numberFormat } from "./display-session.ts";
import type { CellValue, SheetPlan } from "./plan.ts";
import { area, SheetDraft } from "./sheet-draft.ts";
import { HEADING_ROW, KEEP_COLUMN, textColumns } from "./shots-layout.ts";

/** Width of a bold letter in the widest face that a place may show, and room for the filter button; the usual letter is 1. */
const BOLD_LETTER = 1.4;
const BUTTON = 4;

/**
 * The Shots sheet: every shot with a tick for keeping it, as a native table under frozen headings. Unticking a shot
 * recalculates the Comparison sheet. `remarks` has a sentence for shots that contradict themselves or lie far out.
 */
export function shotsSheet(
  session: Session,
  name: string,
  tableName: string,
  remarks: ReadonlyMap<number, string>,
): SheetPlan {
  const { table, units } = session;
  const draft = new SheetDraft(name);
  const metrics = orderedMetrics(table.values.keys());
  const texts = textColumns(table);
  const before = 2 + texts.length;
  const headings = uniqueHeadings([
    "Keep",
    "Build",
    ...texts.map(({ heading }) => heading),
    ...metrics.map((metric) => headingOf(metric, units)),
    ...table.extras.map(({ header }) => header),
    "Remark",
  ]);
  const columns = headings.length;
  const first = HEADING_ROW + 1;

  draft.put(0, 0, [["Shots"]], "title");
  draft.put(
    1,
    0,
    [
      [
        "Untick Keep to leave a shot out: the comparison works itself out again. Sort and filter as you like.",
      ],
    ],
    "subtitle",
  );
  draft.put(HEADING_ROW, 0, [headings], "heading");
  draft.style(area(HEADING_ROW, before, 1, metrics.length), "headingLeft");
  const columnsOfFigures = metrics.map((metric) => table.values.get(metric.key)!);
  const rows: CellValue[][] = [];
  for (let i = 0; i < table.size; i++) {
    const row: CellValue[] = [table.keep[i]!, table.build[i]!];
    for (const { cells } of texts) row.push(cells[i] || null);
    for (const column of columnsOfFigures) row.push(Number.isNaN(column[i]!) ? null : column[i]!);
    for (const { cells } of table.extras) row.push(cells[i] || null);
    row.push(remarks.get(i) ?? null);
    rows.push(row);
  }
  draft.put(first, 0, rows, "plain");
  draft.style(area(first, columns - 1, table.size), "small");
  const figureArea = (m: number) => area(first, before + m, table.size);
  metrics.forEach((metric, m) => {
    draft.format(figureArea(m), numberFormat(metric.decimals));
    draft.validate({
      area: figureArea(m),
      kind: "number",
      least: -1e6,
      most: 1e6,
      message: `${headingOf(metric, units)} takes a number, or nothing where it was not measured.`,
    });
  });
  draft.tick(area(first, KEEP_COLUMN, table.size));
  draft.condition({
    area: area(first, 0, table.size, columns),
    formula: `${cellName(first, KEEP_COLUMN, "column")}=FALSE`,
    style: "dimmed",
  });
  draft.table({ name: tableName, area: area(HEADING_ROW, 0, table.size + 1, columns) });
  draft.freeze(first, 2);
  draft.height(HEADING_ROW, 34);
  draft.width(0, 1, 8);
  draft.width(1, 1, textWidth([...table.build], 14, 34));
  if (texts.length > 0) draft.width(2, texts.length, 10);
  metrics.forEach((_, m) => {
    draft.width(before + m, 1, Math.max(10, headingWidth(headings[before + m]!)));
  });
  if (table.extras.length > 0) draft.width(before + metrics.length, table.extras.length, 14);
  draft.width(columns - 1, 1, 60);
  draft.print({
    landscape: true,
    pagesWide: 1,
    pagesTall: 0,
    titleRows: { row: HEADING_ROW, rows: 1 },
    footer: session.title,
  });
  return draft.plan();
}

/** A table takes each heading once, in any case, and none empty. */
function uniqueHeadings(wished: readonly string[]): string[] {
  const used = new Set<string>();
  return wished.map((wish, i) => {
    const clean = wish.trim().slice(0, 200) || `Column ${i + 1}`;
    let heading = clean;
    for (let n = 2; used.has(heading.toLowerCase()); n++) heading = `${clean} ${n}`;
    used.add(heading.toLowerCase());
    return heading;
  });
}

/**
 * Width of a heading in two lines. A launch monitor gives some fifteen figures a shot, and headings in one line would
 * part the figures too far to read across.
 */
function headingWidth(heading: string): number {
  const words = heading.split(" ");
  const breaks = words.map((_, i) => [words.slice(0, i).join(" "), words.slice(i).join(" ")]);
  const letters = Math.min(...breaks.map((lines) => Math.max(...lines.map(({ length }) => length))));
  return Math.ceil(letters * BOLD_LETTER) + BUTTON;
}

function textWidth(texts: readonly string[], least: number, most: number): number {
  const longest = texts.reduce((length, text) => Math.max(length, text.length), 0);
  return Math.min(most, Math.max(least, longest + 3));
}

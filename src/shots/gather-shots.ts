import { surplusCells, unreadable, wrongSide } from "./cell-problems.ts";
import type { FigureColumn } from "./figure-column.ts";
import { type Gathered, nothingGathered } from "./gathered.ts";
import { idleRow } from "./idle-row.ts";
import { LabelWatch } from "./label-watch.ts";
import { METRICS } from "./metrics.ts";
import { isMissing } from "./missing.ts";
import { plainNumber } from "./plain-number.ts";
import { readCell } from "./read-cell.ts";
import type { ReadOptions } from "./read-options.ts";
import { columnOf, openSection, type Section } from "./section.ts";
import { withSide } from "./side-columns.ts";
import type { Records } from "./split-text.ts";
import { isSummaryLabel } from "./summary-label.ts";
import { readTitle, type Title } from "./title-line.ts";

/**
 * Walks the records once. A row with a figure is a shot unless a summary word labels it; every other row is skipped
 * with a reason, so that each record is either a shot or listed. Yields the share done now and then.
 */
export function* gatherShots(
  text: Records,
  headerAt: number,
  options: ReadOptions,
): Generator<number, Gathered> {
  const records = text.cells;
  const into = nothingGathered(records.length);
  const builds = new Set<string>();
  const skip = (record: number, reason: string) => into.skipped.push({ row: text.line(record), reason });
  const noteTitle = (title: Title, record: number) => {
    if (title.says !== "something else") builds.add(title.text);
    into.titles.push({ ...title, record, inside: record > headerAt, headed: false });
    skip(
      record,
      title.says === "something else" ? "a line about the session" : `a title line: "${title.text}"`,
    );
  };

  for (let record = 0; record < headerAt; record++) {
    const cells = records[record]!;
    const title = idleRow(cells) ? null : readTitle(cells);
    if (title) noteTitle(title, record);
    else skip(record, idleRow(cells) ?? "a line above the table");
  }

  let section!: Section;
  let outs: Float64Array[] = [];
  let labels!: LabelWatch;
  const open = (at: number): number => {
    section = openSection(records, at, text.line, options);
    into.sections.push(section);
    into.problems.push(...section.problems);
    outs = section.figures.map(({ key }) => {
      const out = into.values.get(key) ?? new Float64Array(records.length).fill(Number.NaN);
      into.values.set(key, out);
      return out;
    });
    labels = new LabelWatch(section, builds);
    if (at < 0) return 0;
    skip(at, into.sections.length === 1 ? "the header" : "another header, with other columns");
    for (let below = 1; below < section.depth; below++) skip(at + below, "the header's second row");
    markHeaded(into, at);
    return at + section.depth;
  };

  // A loop of its own: engines run one that can be left and entered again by a fifth slower.
  const walk = (from: number, to: number): number => {
    let record = from;
    for (; record < to; record++) {
      const cells = records[record]!;
      const { figures } = section;
      const n = into.size;
      const problemsBefore = into.problems.length;
      let summary = labels.summaryIn(cells);
      let found = 0;
      let blankZeros = 0;
      for (let at = 0; at < figures.length && summary === ""; at++) {
        const column = figures[at]!;
        const cell = cells[column.index];
        let value = Number.NaN;
        if (cell !== undefined && cell !== "") {
          value = plainNumber(cell, column.decimal);
          // biome-ignore lint/suspicious/noSelfCompare: the cheapest test for NaN, in the one loop that is hot
          if (value === value) value = (value * column.times) / column.over + 0;
          else {
            const reading = readCell(cell, column);
            value = reading.value;
            if (reading.otherMark) into.otherMarks++;
            if (!reading.understood) {
              if (isSummaryLabel(cell, builds)) summary = cell;
              else into.problems.push(unreadable(cell, column, text.line(record)));
            }
          }
          if (column.side >= 0) {
            const turned = withSide(value, cells[column.side] ?? "", column.key);
            if (turned === null)
              into.problems.push(wrongSide(cell!, cells[column.side]!, column, text.line(record)));
            value = turned ?? Number.NaN;
          }
          if (value === 0 && !column.zero) {
            value = Number.NaN;
            blankZeros++;
          } else if (!Number.isNaN(value)) found++;
        }
        outs[at]![n] = value;
      }
      if (summary !== "" && idleRow(cells) !== "a header") {
        into.problems.length = problemsBefore;
        skip(record, `a summary row: "${summary.trim()}"`);
      } else if (found > 0 && !(blankZeros > 0 && onlyZeros(outs, n))) {
        into.record[n] = record;
        into.section[n] = into.sections.length - 1;
        into.title[n] = into.titles.length - 1;
        into.size++;
        labels.shotSeen(cells);
        if (blankZeros > 0) noteZeros(into, cells, figures, outs, n, text.line(record));
        if (cells.length > section.header.length) {
          into.problems.push(...surplusCells(cells, section.header.length, text.line(record)));
        }
      } else {
        const idle = sameHeader(cells, section) ? "a header" : idleRow(cells);
        const title = idle ? null : titleIn(cells, section);
        if (idle || title) into.problems.length = problemsBefore;
        if (title) {
          noteTitle(title, record);
        } else if (idle === "a header" && !sameHeader(cells, section)) {
          record = open(record) - 1;
        } else {
          if (idle === "a header") markHeaded(into, record);
          skip(record, idle === "a header" ? "a repeated header" : (idle ?? noFigures(blankZeros)));
        }
      }
    }
    return record;
  };
  for (let at = open(headerAt); at < records.length; ) {
    at = walk(at, Math.min(at + SLICE, records.length));
    yield at / records.length;
  }
  for (const [key, values] of into.values) into.values.set(key, values.slice(0, into.size));
  const order = new Map(METRICS.map((metric, place) => [metric.key, place]));
  const sorted = [...into.values].sort(([a], [b]) => order.get(a)! - order.get(b)!);
  into.values.clear();
  for (const [key, values] of sorted) into.values.set(key, values);
  return into;
}

/** Records between two reports: some milliseconds of work. */
const SLICE = 2048;

/** Remembers that the last title stands right above a header. */
function markHeaded(into: Gathered, record: number): void {
  const title = into.titles.at(-1);
  const lastShot = into.size > 0 ? into.record[into.size - 1]! : -1;
  if (title && title.record > lastShot && title.record < record) title.headed = true;
}

function sameHeader(cells: readonly string[], { header }: Section): boolean {
  return (
    cells.some((cell) => cell.trim() !== "") &&
    header.every((name, index) => name.trim() === (cells[index] ?? "").trim())
  );
}

/** A title stands in the first column, or in that of the builds; a lone word elsewhere is a remark. */
function titleIn(cells: readonly string[], section: Section): Title | null {
  const first = cells.findIndex((cell) => !isMissing(cell));
  const build = columnOf(section, "build")?.index;
  const start = Math.max(
    0,
    section.header.findIndex((name) => name.trim() !== ""),
  );
  return first <= start || first === build ? readTitle(cells) : null;
}

function onlyZeros(outs: readonly Float64Array[], n: number): boolean {
  return outs.every((out) => Number.isNaN(out[n]!) || out[n] === 0);
}

function noFigures(blankZeros: number): string {
  return blankZeros > 0
    ? "no figure but 0: the shot was not measured"
    : "no figure in any column that was recognised";
}

function noteZeros(
  into: Gathered,
  cells: readonly string[],
  figures: readonly FigureColumn[],
  outs: readonly Float64Array[],
  n: number,
  line: number,
): void {
  figures.forEach((column, at) => {
    if (column.zero || !Number.isNaN(outs[at]![n]!) || isMissing(cells[column.index] ?? "")) return;
    if (readCell(cells[column.index]!, column).value !== 0) return;
    const lines = into.zeros.get(column.header) ?? [];
    lines.push(line);
    into.zeros.set(column.header, lines);
  });
}

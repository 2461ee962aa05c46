import { unitOf } from "../units/unit-of.ts";
import type { Gathered } from "./gathered.ts";
import { metricOf } from "./metrics.ts";
import { isMetricKey, type PlannedColumn } from "./planned-column.ts";
import type { ReadOptions } from "./read-options.ts";
import { rowsWords } from "./rows-words.ts";
import { columnOf } from "./section.ts";
import { delimiterName } from "./sniff-delimiter.ts";
import type { Records } from "./split-text.ts";

/** What else the fitter should know of how a table was read. */
export function readingNotes(
  text: Records,
  delimiter: string,
  shots: Gathered,
  options: ReadOptions,
): string[] {
  const section = shots.sections[0]!;
  const mark = section.decimal === "." ? "point" : "comma";
  const notes = [`Cells are parted by ${delimiterName(delimiter)}; the decimal mark is a ${mark}.`];
  if (text.looseQuotes)
    notes.push("A quotation mark is not closed, so quotation marks were read as plain characters.");
  for (const figure of section.figures) {
    if (figure.mark !== section.decimal) {
      notes.push(
        `${figure.header} was read with a decimal ${figure.mark === "." ? "point" : "comma"}: else no figure would fit.`,
      );
    }
  }
  if (shots.otherMarks > 0) {
    notes.push(
      `Figures read with the other decimal mark, as they made sense with no other: ${shots.otherMarks}.`,
    );
  }
  for (const [header, rows] of shots.zeros) {
    notes.push(`${header} of 0 was taken for a blank, as no shot has it: ${rowsWords(rows)}.`);
  }
  for (const column of section.columns) {
    if (column.leftPositive) notes.push(`${nameOf(column)} counts left as positive; its signs were turned.`);
  }
  notes.push(...unitNotes(shots));
  const unknown = shots.sections
    .flatMap(({ columns }) => columns.filter(isUnknown))
    .map(({ header }) => header);
  if (unknown.length > 0) notes.push(unknownNote([...new Set(unknown)]));
  if (columnOf(section, "club") && !columnOf(section, "build")) {
    notes.push(
      'The table names clubs but no builds; clubs were not taken for builds. If they are, choose "Build" for that column, or name it Build.',
    );
  }
  if (options.leftHanded)
    notes.push("Left-handed player: no figure was mirrored, right is right of the target.");
  return notes;
}

/** Nobody misses the column of gaps that a wide separator leaves. */
function isUnknown({ key, header }: PlannedColumn): boolean {
  return key === null && header !== "";
}

/** Columns kept beside the shots whose figures no statistic uses, the first twelve by name. */
function unknownNote(headers: readonly string[]): string {
  const shown = headers.slice(0, 12).map((header) => `"${clip(header)}"`);
  const more = headers.length > 12 ? ` and ${headers.length - 12} more` : "";
  return `Not recognised, kept beside the shots and left out of every figure: ${shown.join(", ")}${more}.`;
}

function clip(header: string): string {
  const letters = [...header];
  return letters.length > 40 ? `${letters.slice(0, 39).join("")}…` : header;
}

/** Where a table states one unit and leaves another of its kind unstated, the silence deserves a look. */
function unitNotes(shots: Gathered): string[] {
  const columns = shots.sections[0]!.columns;
  const notes: string[] = [];
  for (const column of columns) {
    if (column.unitFrom !== "assumed" || !isMetricKey(column.key) || isStrike(column)) continue;
    const dimension = unitOf(column.unit)?.dimension;
    const stated = columns.find(
      (other) =>
        other.unitFrom !== "assumed" &&
        !isStrike(other) &&
        other.unit !== column.unit &&
        unitOf(other.unit)?.dimension === dimension,
    );
    if (!stated) continue;
    const usual = metricOf(column.key).unit;
    notes.push(
      `${column.header} states no unit and was taken in ${usual}, though ${stated.header} is in ${stated.unit}.`,
    );
  }
  return notes;
}

/** Millimetres on the face say nothing of yards down the range. */
function isStrike({ key }: PlannedColumn): boolean {
  return key === "strikeX" || key === "strikeY";
}

function nameOf({ header, index }: PlannedColumn): string {
  return header || `Column ${index + 1}`;
}

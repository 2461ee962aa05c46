import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { setFileNumber } from "./set-file-number.ts";
import { headingUnitFault } from "./set-file-units.ts";
import type { SetClub } from "./set-request.ts";

type Field = Exclude<keyof SetClub, "club">;
type NumberField = Exclude<Field, "swingweight" | "putter">;

/** The columns of a set file's table, by the words in their headings. */
const columns: Readonly<Record<string, Field | "club">> = {
  club: "club",
  length: "length",
  loft: "loft",
  lie: "lie",
  swingweight: "swingweight",
  head: "head",
  "head weight": "head",
  "head loft": "headLoft",
  "head lie": "headLie",
  bounce: "bounce",
  shaft: "shaft",
  "shaft weight": "shaft",
  "raw length": "rawLength",
  "tip trim": "tipTrim",
  bore: "bore",
  frequency: "frequency",
  carry: "carry",
  putter: "putter",
};

/** What a cell of the putter column may say, and what it says. */
const putters: ReadonlyMap<string, boolean> = new Map([
  ...["yes", "y", "x", "true"].map((word) => [word, true] as const),
  ...["no", "n", "false"].map((word) => [word, false] as const),
]);

/** The table's columns from its row of headings; what stands in brackets may tell the unit, and must tell the right one. */
export function setFileColumns(
  cells: readonly string[],
  lengths: "in" | "cm" = "in",
): Outcome<(Field | "club" | undefined)[]> {
  const found: (Field | "club" | undefined)[] = [];
  for (const cell of cells) {
    const word = cell
      .replace(/[([].*/s, "")
      .replaceAll(/[\s_-]+/g, " ")
      .trim()
      .toLowerCase();
    const field = Object.hasOwn(columns, word) ? columns[word] : undefined;
    if (word !== "" && field === undefined) {
      return invalid(
        `"${cell.trim()}" is no column of a set; it should be one of: ${Object.keys(columns).join(", ")}.`,
      );
    }
    if (field && found.includes(field))
      return invalid(`"${cell.trim()}" heads two columns; it should head one.`);
    const fault = field && headingUnitFault(cell, field, lengths);
    if (fault) return fault;
    found.push(field);
  }
  return found.includes("length")
    ? found
    : invalid('The table has no "length" column; every club needs a length.');
}

/** One club from a row under those columns; blank cells are left out. */
export function setFileClub(
  fields: readonly (Field | "club" | undefined)[],
  cells: readonly string[],
): Outcome<SetClub> {
  const figures: Partial<Record<NumberField, number>> = {};
  let club = "";
  let swingweight: string | undefined;
  let putter = false;
  for (const [index, cell] of cells.entries()) {
    const text = cell.trim();
    const field = fields[index];
    if (text === "") continue;
    if (field === undefined) return invalid(`"${text}" stands under no heading; every cell should.`);
    if (field === "club") club = text;
    else if (field === "swingweight") swingweight = text;
    else if (field === "putter") {
      const said = putters.get(text.toLowerCase());
      if (said === undefined) return invalid(`putter is "${text}"; it should be yes or no.`);
      putter = said;
    } else {
      const figure = setFileNumber(field, text);
      if (isProblem(figure)) return figure;
      figures[field] = figure;
    }
  }
  if (club === "") return invalid("A club has no label; the club column should name it.");
  const { length } = figures;
  if (length === undefined) return invalid(`Club ${club} has no length; it should be inches.`);
  return { ...figures, club, length, ...(swingweight ? { swingweight } : {}), ...(putter ? { putter } : {}) };
}

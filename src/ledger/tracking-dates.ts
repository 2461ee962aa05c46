import { dayOf, dayOfNumber } from "./day.ts";

/** Which comes first where a day is written 3/4/2026. */
export type DayOrder = "day first" | "month first";

export interface DayEvidence {
  readonly order: DayOrder | null;
  /** A question for the user where days cannot be told, or speak both ways. */
  readonly question: string | null;
}

const PARTED = /^(\d{1,4})\s*([./-])\s*(\d{1,2})\s*[./-]\s*(\d{2,4})(?:\D.*)?$/;

/** Looks through all days of a sheet for one that can be read in one order only. Days with full stops are day first. */
export function dayEvidence(cells: readonly string[]): DayEvidence {
  const split = cells.flatMap((cell) => {
    const found = PARTED.exec(cell.trim());
    return found && found[1]!.length < 3 && found[2] !== "."
      ? [{ cell, a: Number(found[1]), b: Number(found[3]) }]
      : [];
  });
  const dayFirst = split.find(({ a, b }) => a > 12 && b <= 12);
  const monthFirst = split.find(({ a, b }) => b > 12 && a <= 12);
  const unsure = split.find(({ a, b }) => a !== b);
  if (dayFirst && monthFirst) {
    const question = `"${dayFirst.cell}" has the day first and "${monthFirst.cell}" the month: say which holds for the rest.`;
    return { order: null, question };
  }
  if (dayFirst) return { order: "day first", question: null };
  if (monthFirst) return { order: "month first", question: null };
  if (!unsure) return { order: null, question: null };
  const question = `"${unsure.cell}" may be the ${unsure.a}. of month ${unsure.b} or the ${unsure.b}. of month ${unsure.a}: say whether the day or the month comes first.`;
  return { order: null, question };
}

/** `yyyy-mm-dd` of a cell; null where it is no day or its order is not known. */
export function readDay(cell: string, order: DayOrder | null): string | null {
  const text = cell.trim();
  const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:\D.*)?$/.exec(text);
  if (iso) return dayOf(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const parted = PARTED.exec(text);
  if (parted) {
    const [a, b, year] = [Number(parted[1]), Number(parted[3]), fullYear(parted[4]!)];
    if (parted[2] === "." || a > 12) return dayOf(year, b, a);
    if (b > 12) return dayOf(year, a, b);
    if (a === b) return dayOf(year, a, a);
    return order === null ? null : order === "day first" ? dayOf(year, b, a) : dayOf(year, a, b);
  }
  if (/^\d{5}(?:[.,]\d+)?$/.test(text)) return dayOfNumber(Number(text.replace(",", ".")));
  return wordedDay(text);
}

/** "14 Mar 2026", "March 14th, 2026", "14. März 26". */
function wordedDay(text: string): string | null {
  const found =
    /^(\d{1,2})(?:st|nd|rd|th|\.)?[\s-]+(\p{L}+)\.?,?[\s-]+'?(\d{2,4})$/u.exec(text) ??
    swapped(/^(\p{L}+)\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+'?(\d{2,4})$/u.exec(text));
  if (!found) return null;
  const name = found[2]!.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().slice(0, 4);
  const month = MONTHS.findIndex((names) => names.some((one) => name.startsWith(one)));
  return month < 0 ? null : dayOf(fullYear(found[3]!), month + 1, Number(found[1]));
}

const swapped = (found: RegExpExecArray | null) => found && [found[0], found[2]!, found[1]!, found[3]!];

/** English, German, French and Spanish; enough of each to tell it. */
const MONTHS: readonly (readonly string[])[] = [
  ["jan", "ene"],
  ["feb", "fev"],
  ["mar"],
  ["apr", "avr", "abr"],
  ["may", "mai"],
  ["jun", "juin"],
  ["jul", "juil"],
  ["aug", "aou", "ago"],
  ["sep"],
  ["oct", "okt"],
  ["nov"],
  ["dec", "dez", "dic"],
];

/** Two digits from 69 on are of the last century, as POSIX reads them (strptime, %y: 69 to 99 are 1969 to 1999). */
function fullYear(text: string): number {
  const year = Number(text);
  return text.length > 2 ? year : year + (year < 69 ? 2000 : 1900);
}

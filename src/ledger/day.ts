const DAY = 86_400_000;
/** What spreadsheets call day 0; right from March 1900 on. */
const DAY_NOUGHT = Date.UTC(1899, 11, 30);

/** The day number of a spreadsheet from `yyyy-mm-dd`; null where that is no day. */
export function dayNumber(day: string): number | null {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(day);
  if (!found) return null;
  const [year, month, date] = [Number(found[1]), Number(found[2]), Number(found[3])];
  return isDay(year, month, date) ? (Date.UTC(year, month - 1, date) - DAY_NOUGHT) / DAY : null;
}

/** `yyyy-mm-dd` from the day number of a spreadsheet; null where it is none. */
export function dayOfNumber(number: number): string | null {
  if (!(number >= 61 && number < 2_958_466)) return null;
  return new Date(DAY_NOUGHT + Math.floor(number) * DAY).toISOString().slice(0, 10);
}

/** `yyyy-mm-dd` from its parts; null where there is no such day. */
export function dayOf(year: number, month: number, date: number): string | null {
  if (!isDay(year, month, date)) return null;
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(date).padStart(2, "0")}`;
}

function isDay(year: number, month: number, date: number): boolean {
  const made = new Date(Date.UTC(year, month - 1, date));
  return year >= 1901 && year < 9999 && made.getUTCMonth() === month - 1 && made.getUTCDate() === date;
}

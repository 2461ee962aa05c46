/** Days from the spreadsheet's first day to 1970, for dates after February 1900. */
const DAYS_TO_1970 = 25_569;
const MILLISECONDS_A_DAY = 86_400_000;

/**
 * A cell's value as text. Numbers in full with a point; what is formatted as a date or time, which the spreadsheet
 * keeps as a number of days, as `2026-05-14 10:30:00`, so that a time column does not turn into figures.
 */
export function cellText(value: unknown, format: string): string {
  if (value === null || value === undefined) return "";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value !== "number") return String(value);
  const { date, time } = partsOf(format);
  if (!date && !time) return String(value);
  const seconds = Math.round((value - DAYS_TO_1970) * (MILLISECONDS_A_DAY / 1000));
  const moment = new Date(seconds * 1000);
  if (Number.isNaN(moment.getTime())) return String(value);
  const [day, clock] = moment.toISOString().slice(0, 19).split("T");
  return [date ? day : "", time ? clock : ""].filter(Boolean).join(" ");
}

/** Whether a number format shows a day, a time of day, or both. Texts, colours and conditions in it do not count. */
function partsOf(format: string): { date: boolean; time: boolean } {
  const codes = format.toLowerCase().replace(/"[^"]*"|\\.|_.|\*.|\[(?![hms]+\])[^\]]*\]|general/g, "");
  return { date: /[yd]/.test(codes), time: /[hs]/.test(codes) };
}

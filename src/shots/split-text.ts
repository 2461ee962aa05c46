import Papa from "papaparse";

/** A pasted text cut into records and cells. Nothing is trimmed here. */
export interface Records {
  readonly cells: readonly (readonly string[])[];
  /** The line of the text, counted from 1, that a record begins in: a quoted cell may hold line breaks. */
  readonly line: (record: number) => number;
  /** Whether a quotation mark was never closed, so that all of them were read as plain characters. */
  readonly looseQuotes: boolean;
}

/**
 * Takes off the byte order mark and makes every line end in one newline. Done before cutting, as one text may mix
 * kinds of line ends when it is pasted together from two places.
 */
export function plainLines(text: string): string {
  const start = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  return start.includes("\r") ? start.replace(/\r\n?/g, "\n") : start;
}

/** Cuts a text of plain lines. The newline at its end makes no record of its own. */
export function splitText(text: string, delimiter: string, preview = 0): Records {
  const parse = (fastMode?: boolean) =>
    Papa.parse<string[]>(text, { delimiter, newline: "\n", preview, ...(fastMode ? { fastMode } : {}) });
  let result = parse();
  const looseQuotes = result.errors.some((error) => error.type === "Quotes");
  if (looseQuotes) result = parse(true);
  const cells = result.data;
  const last = cells.at(-1);
  if (preview === 0 && last?.length === 1 && last[0] === "") cells.pop();
  return {
    cells,
    line: looseQuotes || !text.includes('"') ? (record) => record + 1 : linesOf(cells),
    looseQuotes,
  };
}

/** Where records begin, counted in lines of the text: a quoted cell may hold line breaks. */
export function linesOf(cells: readonly (readonly string[])[]): (record: number) => number {
  const starts = new Int32Array(cells.length + 1);
  let line = 1;
  cells.forEach((record, index) => {
    starts[index] = line;
    line += 1;
    for (const cell of record) {
      for (let at = cell.indexOf("\n"); at >= 0; at = cell.indexOf("\n", at + 1)) line += 1;
    }
  });
  return (record) => starts[record] ?? line;
}

/** A problem with a set file, taken apart: which line, what stands there, what would do. */
export interface FaultyLine {
  /** Counted from 1. */
  readonly line: number;
  readonly found: string;
  readonly message: string;
}

/** The line of a set file that a message speaks of, by its number or by its club; null where it is about the whole. */
export function faultyLine(text: string, message: string): FaultyLine | null {
  const lines = text.split(/\r?\n/);
  const numbered = /^Line (\d+): (.*)$/s.exec(message);
  const named = /^Club (.+?): (.*)$/s.exec(message);
  const line = numbered
    ? Number(numbered[1])
    : 1 + lines.findIndex((row) => named !== null && row.split(/[;,\t|]/)[0]!.trim() === named[1]!.trim());
  const found = lines[line - 1]?.trim();
  if (found === undefined) return null;
  return { line, found, message: numbered?.[2] ?? message };
}

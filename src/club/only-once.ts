import { invalid, type Problem } from "../outcome/problem.ts";

/**
 * Watches what should stand once in a file, whatever its case: the second of a kind is refused, with the line of the
 * first, so that neither is dropped in silence.
 */
export function onlyOnce(): (what: string, line: number) => Problem | undefined {
  const lines = new Map<string, number>();
  return (what, line) => {
    const key = what.toLowerCase();
    const before = lines.get(key);
    if (before !== undefined)
      return invalid(`${what} stands in line ${before} already; it should stand once.`);
    lines.set(key, line);
    return undefined;
  };
}

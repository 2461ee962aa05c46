/** The lines of a text; a line break at its very end begins no further one. */
export function linesOf(text: string): string[] {
  const lines = text.split(/\r?\n/);
  return lines.at(-1) === "" ? lines.slice(0, -1) : lines;
}

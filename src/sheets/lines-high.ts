/** How many letters fit one line of one column, about, in the widest face that a place may show, and how high a line is. */
const SIZES = {
  headline: { letters: 5.6, points: 20 },
  sentence: { letters: 7.8, points: 15.5 },
  small: { letters: 9.5, points: 12 },
} as const;

/** Points that a text across so many columns of a comparison needs, so that none of its lines is cut off. */
export function linesHigh(text: string, columns: number, size: keyof typeof SIZES): number {
  const { letters, points } = SIZES[size];
  return Math.ceil(text.length / (columns * letters)) * points + 2;
}

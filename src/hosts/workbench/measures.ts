/** Pixels to a character of the default font at its usual size, and the padding of a column. */
const PER_CHARACTER = 7;
const PADDING = 5;
const PIXELS_PER_POINT = 96 / 72;

/** Width of a column in the grid's pixels from the spreadsheet's characters. */
export function columnPixels(characters: number): number {
  return characters * PER_CHARACTER + PADDING;
}

/** Back again, to the hundredth of a character. */
export function columnCharacters(pixels: number): number {
  return Math.round(((pixels - PADDING) / PER_CHARACTER) * 100) / 100;
}

/** Height of a row in the grid's pixels from the spreadsheet's points, of which an inch has 72 and 96 pixels. */
export function rowPixels(points: number): number {
  return points * PIXELS_PER_POINT;
}

/** Back again, to the hundredth of a point. */
export function rowPoints(pixels: number): number {
  return Math.round((pixels / PIXELS_PER_POINT) * 100) / 100;
}

/**
 * A length for a sentence, to a thousandth of an inch. Sentences of this folder write each length so, and those who
 * show them in centimetres find it by that.
 *
 * @example inInches(38.50000001) // "38.5 in"
 */
export function inInches(length: number): string {
  const short = Number(length.toFixed(3));
  // A figure that is refused for being hardly more than nothing must not be told as 0.
  return `${short === 0 ? length : short} in`;
}

/**
 * The number in a run of digits and marks, given the decimal mark. The other mark, spaces and apostrophes may part
 * thousands, but only into groups of three. NaN where it does not fit.
 *
 * @example markedNumber("1'234,5", ",") // 1234.5
 * @example markedNumber("12.34", ",") // NaN
 */
export function markedNumber(text: string, decimal: "." | ","): number {
  const [whole, fraction, ...more] = text.split(decimal);
  if (more.length > 0 || whole === undefined) return Number.NaN;
  if (fraction !== undefined && !/^\d*$/.test(fraction)) return Number.NaN;
  const parted = decimal === "." ? GROUPED_BY_COMMA : GROUPED_BY_POINT;
  if (!(parted.test(whole) || (whole === "" && fraction))) return Number.NaN;
  return Number(`${whole.replace(/\D/g, "") || "0"}.${fraction || "0"}`);
}

const GROUPED_BY_COMMA = /^\d+$|^\d{1,3}([,'’ ])\d{3}(\1\d{3})*$/;
const GROUPED_BY_POINT = /^\d+$|^\d{1,3}([.'’ ])\d{3}(\1\d{3})*$/;

const POWERS = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

/** The character code of a decimal mark. */
export const POINT = 46;
/** The character code of a comma, as plain figures are read code by code. */
export const COMMA = 44;

/**
 * The number in a cell that holds nothing but digits, perhaps a sign and one decimal mark; NaN for all else, which
 * `readFigure` then looks at. Nine cells of ten go this way, so it walks the characters once and makes nothing.
 * Up to 15 digits the quotient of two exact numbers is the double nearest to what was written.
 */
export function plainNumber(cell: string, decimal: number): number {
  const end = cell.length;
  let at = 0;
  let negative = false;
  const first = cell.charCodeAt(0);
  if (first === 45 || first === 0x2212 || first === 0x2013) {
    negative = true;
    at = 1;
  } else if (first === 43) at = 1;
  let digits = 0;
  let decimals = -1;
  let whole = 0;
  for (; at < end; at++) {
    const code = cell.charCodeAt(at);
    if (code >= 48 && code <= 57) {
      whole = whole * 10 + (code - 48);
      digits++;
      if (decimals >= 0) decimals++;
    } else if (code === decimal && decimals < 0) decimals = 0;
    else return Number.NaN;
  }
  if (digits === 0 || digits > 15) return Number.NaN;
  if (whole === 0) return 0;
  const value = decimals > 0 ? whole / POWERS[decimals]! : whole;
  return negative ? -value : value;
}

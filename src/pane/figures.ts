/** Figures as people of this place write them: with a decimal comma where there is one. */
export interface Figures {
  /** A figure with so many decimals and a true minus sign. */
  readonly show: (value: number, decimals: number) => string;
  /** With no more decimals than it needs and the minus sign of a keyboard, for boxes: `36.75`, `95`. */
  readonly plain: (value: number, mostDecimals: number) => string;
  /** Reads what a person typed; NaN where it is no number. */
  readonly read: (text: string) => number;
  readonly decimalMark: string;
}

/** Figures for a locale; for the browser's own where none is named. */
export function figuresFor(locale?: string): Figures {
  const parts = new Intl.NumberFormat(locale).formatToParts(12345.6);
  const decimalMark = parts.find((part) => part.type === "decimal")?.value ?? ".";
  const formats = new Map<number, (value: number) => string>();
  const plains = new Map<number, Intl.NumberFormat>();
  const show = (value: number, decimals: number) => {
    let found = formats.get(decimals);
    if (!found) {
      const digits = { minimumFractionDigits: decimals, maximumFractionDigits: decimals };
      const { format: write } = new Intl.NumberFormat(locale, digits);
      found = remembered((rounded) => write(rounded).replace("-", "\u2212"));
      formats.set(decimals, found);
    }
    // Rounded first: what rounds to zero has no minus sign, and engines of 2021 know no word for that.
    return found(Number(value.toFixed(decimals)) || 0);
  };
  return {
    show,
    plain: (value, most) => {
      const found = plains.get(most) ?? new Intl.NumberFormat(locale, plainly(most));
      plains.set(most, found);
      return found.format(value);
    },
    read: (text) => readNumber(text),
    decimalMark,
  };
}

/** Writing a figure takes the browser ten times as long as finding it again, and a list of shots asks for hundreds. */
function remembered(write: (value: number) => string): (value: number) => string {
  const written = new Map<number, string>();
  return (value) => {
    const found = written.get(value) ?? write(value);
    if (written.size >= MOST_REMEMBERED) written.clear();
    written.set(value, found);
    return found;
  };
}

const MOST_REMEMBERED = 5000;

function plainly(most: number): Intl.NumberFormatOptions {
  return { maximumFractionDigits: most, useGrouping: false };
}

/** Takes either decimal mark: nobody types thousands marks into a box for a shaft's weight. */
function readNumber(text: string): number {
  const plain = text.trim().replace("\u2212", "-").replace(",", ".");
  return /^-?\d*\.?\d+$/.test(plain) ? Number(plain) : Number.NaN;
}

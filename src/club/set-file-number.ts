import { invalid, type Outcome } from "../outcome/problem.ts";

const DECIMAL = /^[-+]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;
/** Inches and a fraction, or a fraction alone: `38 1/2`, `38-1/2`, `1/2`. */
const FRACTION = /^([-+]?)(?:(\d+)[\s-]+)?(\d+)\/([1-9]\d*)$/;
/** Fractions of a single letter, which every such font has: ½, ¼, ¾, ⅛ and so on. */
const FRACTION_LETTER = /[¼-¾⅐-⅞]/g;

/**
 * A figure of a set file: point or comma as its decimal mark, a trailing inch or degree mark allowed, and inches
 * with a fraction as the bench writes them.
 *
 * @example setFileNumber("length", "38,5") // 38.5
 * @example setFileNumber("length", "38 1/2") // 38.5
 * @example setFileNumber("tip trim", "½") // 0.5
 */
export function setFileNumber(name: string, cell: string | undefined): Outcome<number> {
  const typed = (cell ?? "").trim();
  const text = typed
    .replace(/\s*["”″°]$/, "")
    .replace(FRACTION_LETTER, (letter) => ` ${letter.normalize("NFKC").replace("\u2044", "/")}`)
    .trim();
  if (DECIMAL.test(text)) return Number(text.replace(",", "."));
  const [, sign, whole = "0", part, parts] = FRACTION.exec(text) ?? [];
  if (sign !== undefined) return (sign === "-" ? -1 : 1) * (Number(whole) + Number(part) / Number(parts));
  const alone = /^[-+]?[\d.,]+\s*[a-z]+\.?$/i.test(text) ? " alone, without its unit" : "";
  return invalid(`${name} is "${typed}"; it should be a number${alone}.`);
}

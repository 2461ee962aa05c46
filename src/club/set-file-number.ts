import { invalid, type Outcome } from "../outcome/problem.ts";

/**
 * A figure of a set file: point or comma as its decimal mark, a trailing inch or degree mark allowed, and inches
 * with a fraction as the bench writes them.
 *
 * @example setFileNumber("length", "38,5") // 38.5
 * @example setFileNumber("length", "38 1/2") // 38.5
 */
export function setFileNumber(name: string, cell: string | undefined): Outcome<number> {
  const text = (cell ?? "").trim();
  const match = /^([-+]?\d+(?:[.,]\d+)?|[-+]?[.,]\d+)(?:\s+(\d+)\/([1-9]\d*))?\s*["”°]?$/.exec(text);
  if (!match) return invalid(`${name} is "${text}"; it should be a number.`);
  const whole = Number(match[1]!.replace(",", "."));
  const part = match[2] === undefined ? 0 : Number(match[2]) / Number(match[3]);
  return text.startsWith("-") ? whole - part : whole + part;
}

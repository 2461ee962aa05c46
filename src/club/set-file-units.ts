import { invalid, type Problem } from "../outcome/problem.ts";
import type { SetClub } from "./set-request.ts";

/** Units that a heading may tell, by the words for them. */
const UNITS: Readonly<Record<string, string>> = {
  ...{ in: "in", inch: "in", inches: "in", '"': "in", "″": "in" },
  ...{ cm: "cm", centimetre: "cm", centimetres: "cm", centimeter: "cm", centimeters: "cm" },
  ...{ mm: "mm", m: "m", ft: "ft", feet: "ft" },
  ...{ g: "g", gram: "g", grams: "g", kg: "kg", oz: "oz", ounce: "oz", ounces: "oz", lb: "lb" },
  ...{ "°": "degrees", deg: "degrees", degree: "degrees", degrees: "degrees" },
};

const LENGTHS: readonly (keyof SetClub)[] = ["length", "rawLength", "tipTrim", "bore"];
const WEIGHTS: readonly (keyof SetClub)[] = ["head", "shaft"];
const ANGLES: readonly (keyof SetClub)[] = ["loft", "lie", "headLoft", "headLie", "bounce"];

/** The unit that a word means, "in" or "cm" for lengths of clubs; undefined where it is none known here. */
export function setFileUnit(word: string): string | undefined {
  const key = word.trim().toLowerCase();
  return Object.hasOwn(UNITS, key) ? UNITS[key] : undefined;
}

/**
 * Refuses a heading that tells another unit than its column is read in: "length (cm)" over a set in inches would make
 * clubs two and a half times as long. Words in brackets that are no unit say nothing.
 */
export function headingUnitFault(
  heading: string,
  field: keyof SetClub,
  lengths: "in" | "cm",
): Problem | undefined {
  const unit = setFileUnit(/[([]\s*([^\s)\]]+)/.exec(heading)?.[1] ?? "");
  if (unit === undefined) return undefined;
  const fault = (right: string, would: string) =>
    unit === right ? undefined : invalid(`"${heading.trim()}" is headed in ${unit}; it should be ${would}.`);
  if (LENGTHS.includes(field)) {
    return lengths === "cm"
      ? fault("cm", 'cm, as the line "lengths; cm" says')
      : fault("in", 'in, or a line "lengths; cm" should stand above the table');
  }
  if (WEIGHTS.includes(field)) return fault("g", "g");
  return ANGLES.includes(field) ? fault("degrees", "degrees") : undefined;
}

import { centimetresPerInch } from "../club/exact-units.ts";
import { setFileUnit } from "../club/set-file-units.ts";
import type { UnitSet } from "../shots/unit-set.ts";

/** How lengths of clubs are written at the bench. Inside they are inches. */
export interface BenchLengths {
  readonly unit: "in" | "cm";
  /** An inch in the unit shown. */
  readonly perInch: number;
  /**
   * An inch figure in the unit shown, to what a bench can measure: sixty-fourths of an inch as they are and other
   * inches to a hundredth, such as those of a set file in centimetres; centimetres to a tenth of a millimetre.
   */
  readonly shown: (inches: number) => number;
  /** Decimals that a figure may need, and the number formats that show them. */
  readonly decimals: number;
  readonly format: string;
  readonly differenceFormat: string;
  /** A sentence with every "0.5 in" of it in the unit shown; `inInches` writes them so. */
  readonly words: (sentence: string) => string;
}

const INCHES: BenchLengths = {
  ...{ unit: "in", perInch: 1, decimals: 3 },
  ...{ format: "0.00##", differenceFormat: "+0.00##;-0.00##;0.00" },
  shown: (inches) => (Number.isInteger(inches * 64) ? inches : Math.round(inches * 100) / 100),
  words: (sentence) => sentence,
};

const toCentimetres = (inches: number) => Math.round(inches * centimetresPerInch * 100) / 100;

/** A figure of inches in a sentence of ours: not inch-ounces, and not "3 in the set". */
const IN_WORDS = /(\d+(?:\.\d+)?) in(?![-\w]| (?:the|a|all)\b)/g;

const CENTIMETRES: BenchLengths = {
  ...{ unit: "cm", perInch: centimetresPerInch, decimals: 2 },
  ...{ format: "0.0#", differenceFormat: "+0.0#;-0.0#;0.0" },
  shown: toCentimetres,
  // Splitting by a group puts what a person typed, in quotation marks, at every second place: it stays as it is.
  words: (sentence) =>
    sentence
      .split(/("[^"]*")/)
      .map((part, i) => (i % 2 === 1 ? part : inCentimetres(part)))
      .join(""),
};

function inCentimetres(words: string): string {
  return words
    .replace(IN_WORDS, (_, inches: string) => `${toCentimetres(Number(inches))} cm`)
    .replace(/(?<!\d )\binches\b/g, "centimetres");
}

/** Lengths as a set file of somebody's own has them: inches, unless a line of it says otherwise. */
export function setFileLengths(setText: string): BenchLengths {
  const word = /^\s*lengths\s*[;,\t|]\s*"?\s*([a-z]+)\b/im.exec(setText)?.[1] ?? "";
  return setFileUnit(word) === "cm" ? CENTIMETRES : INCHES;
}

/** Inches where shots are shown in yards, centimetres where they are shown in metres. */
export function benchLengths(units: UnitSet): BenchLengths {
  return units === "us" ? INCHES : CENTIMETRES;
}

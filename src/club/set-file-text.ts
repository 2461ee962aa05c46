import Papa from "papaparse";
import { centimetresPerInch } from "./exact-units.ts";
import { scaleLengths } from "./scale-lengths.ts";
import type { SetClub, SetRequest, SetTarget } from "./set-request.ts";

type Row = readonly (string | number | undefined)[];

/** Headings of the table's columns and what stands below them. */
const COLUMNS: readonly (readonly [heading: string, field: keyof SetClub])[] = [
  ["club", "club"],
  ["length", "length"],
  ["loft", "loft"],
  ["lie", "lie"],
  ["swingweight", "swingweight"],
  ["head", "head"],
  ["head loft", "headLoft"],
  ["head lie", "headLie"],
  ["bounce", "bounce"],
  ["shaft", "shaft"],
  ["raw length", "rawLength"],
  ["tip trim", "tipTrim"],
  ["bore", "bore"],
  ["frequency", "frequency"],
  ["carry", "carry"],
];

/** Columns that a set file always shows, so that a person sees where they would type. */
const ALWAYS: readonly (keyof SetClub)[] = ["club", "length", "loft", "lie", "head", "rawLength", "bore"];

/**
 * A set request written as the set file that `readSetFile` reads back as the same request: lines about the whole
 * set, then the row of headings, then a row a club. Semicolons stand between the cells. In centimetres lengths are
 * written to a tenth of a millimetre, finer than a bench can measure.
 *
 * @param decimalMark of the figures; the reader takes a comma and a point alike
 */
export function setFileText(inInches: SetRequest, lengths: "in" | "cm" = "in", decimalMark = "."): string {
  const request =
    lengths === "cm"
      ? scaleLengths(inInches, (inches) => Math.round(inches * centimetresPerInch * 100) / 100)
      : inInches;
  const putters = request.clubs.some(({ putter }) => putter);
  const shown = COLUMNS.filter(
    ([, field]) => ALWAYS.includes(field) || request.clubs.some((club) => club[field] !== undefined),
  );
  const rows: Row[] = [
    ...(lengths === "cm" ? [["lengths", "cm"]] : []),
    ...wholeSet(request),
    [...shown.map(([heading]) => heading), ...(putters ? ["putter"] : [])],
    ...request.clubs.map((club) => [
      ...shown.map(([, field]) => club[field] as string | number | undefined),
      ...(putters ? [club.putter ? "yes" : "no"] : []),
    ]),
  ];
  return rows.map((row) => line(row, decimalMark)).join("\n");
}

/** A space behind each semicolon reads better; quotation marks are such only right behind one. */
function line(row: Row, decimalMark: string): string {
  const cells = row.map((cell) => (typeof cell === "number" ? String(cell).replace(".", decimalMark) : cell));
  const quoted = cells.some((cell) => /[";\r\n]/.test(cell ?? ""));
  return Papa.unparse([cells], { delimiter: quoted ? ";" : "; " });
}

function wholeSet(request: SetRequest): Row[] {
  const { name, target, shafts, grip, ferrule, epoxy, shaftBlank, tipTrims, bendLimit, tape } = request;
  const limits = shaftBlank?.limits;
  const one = (word: string, value: string | number | undefined): Row[] =>
    value === undefined ? [] : [[word, value]];
  return [
    ...one("set", name),
    targetRow(target),
    shafts.kind === "list"
      ? ["shafts", "list", ...shafts.weights]
      : stepped(["shafts", shafts.weight], shafts.step, shafts.reference),
    cut(["grip", grip.weight, grip.length, grip.balance]),
    ...one("ferrule", ferrule),
    ...one("epoxy", epoxy),
    ...one("tip", shaftBlank?.tipKind),
    ...(tipTrims ? [stepped(["tip trims", tipTrims.tip], tipTrims.step, tipTrims.reference)] : []),
    ...one("balance share", shaftBlank?.balanceShare),
    ...one("most tip trim", limits?.tip),
    ...one("most butt trim", limits?.butt),
    ...one("least cut length", limits?.cutLength),
    ...one("bend limit", bendLimit),
    ...(tape ? [["tape", tape.up, tape.most]] : []),
    ...Object.entries(request.tolerances ?? {}).map(([key, value]): Row => ["tolerance", key, value]),
    ...(request.bin?.length ? [["bin", ...request.bin]] : []),
  ];
}

function targetRow(target: SetTarget): Row {
  switch (target.kind) {
    case "swingweight":
      return stepped(["target", "swingweight", target.code], target.step, target.reference);
    case "inertia":
      return ["target", "inertia", target.inertia];
    case "inertia of":
      return ["target", "inertia of", target.reference, target.code];
  }
}

/** A value with the step and the club it starts from, as far as they are given. */
function stepped(row: Row, step: number | undefined, reference: string | undefined): Row {
  return cut([...row, step ?? (reference === undefined ? undefined : 0), reference]);
}

/** Without the blanks at the end. */
function cut(row: Row): Row {
  return row.slice(0, row.findLastIndex((cell) => cell !== undefined) + 1);
}

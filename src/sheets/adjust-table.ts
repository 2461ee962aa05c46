import { lengthRule } from "../club/check-length.ts";
import { gramsPerOunce } from "../club/exact-units.ts";
import type { PlannedClub } from "../club/plan-club.ts";
import { sensitivities } from "../club/sensitivities.ts";
import { swingweightScale } from "../club/swingweight-scale.ts";
import { isProblem } from "../outcome/problem.ts";
import { areaName, cellName } from "./a1.ts";
import type { BenchJob } from "./bench-job.ts";
import { benchLengths } from "./bench-lengths.ts";
import { type BuildLayout, LABELS, PER_FIGURE } from "./build-layout.ts";
import { type CheckedFigure, FREQUENCY, figuresOf } from "./checked-figures.ts";
import type { FormulaCell } from "./plan.ts";
import { area, formula, type SheetDraft } from "./sheet-draft.ts";

/** Columns before the words of what to do: club, two sensitivities, two answers. */
const BEFORE_WORDS = 5;
/** Columns that the words take. */
const WORDS = 7;
/** Clubs beyond which rows are drawn closer, to keep the print on one page large. */
const FEW = 9;
/** Columns of the whole table. */
export const ADJUST_COLUMNS = BEFORE_WORDS + WORDS;

/** Grams at the butt that take a point off the scale: a point's inch-ounces over the 14 inches to the fulcrum. */
const BUTT_GRAMS = (swingweightScale.point * gramsPerOunce) / swingweightScale.fulcrum;

/** What to do where a mark says adjust: grams at the tip or the butt by the club's own model, and words. */
export function putAdjust(draft: SheetDraft, job: BenchJob, layout: BuildLayout): void {
  const { adjust: row, adjustClubs: first } = layout;
  const { clubs } = job.plan;
  draft.put(
    row,
    LABELS,
    [["To adjust", "Head, g a point", "Butt, g a point", "Add at head, g", "or at butt, g"]],
    "headingCentre",
  );
  draft.putAcross(row, BEFORE_WORDS, WORDS, "What to do, in this order", "headingCentre");
  draft.height(row, 46);
  clubs.forEach((club, index) => {
    const at = first + index;
    draft.put(at, LABELS, [[club.club]], "label");
    draft.put(at, 1, [[headGrams(club), -BUTT_GRAMS, ...gramsToAdd(layout, index)]], "figure");
    draft.putAcross(
      at,
      BEFORE_WORDS,
      WORDS,
      words(job, layout, index),
      "small",
      clubs.length > FEW ? 22 : 30,
    );
  });
  draft.format(area(first, 1, clubs.length, 2), "+0.00;-0.00;0.00");
  draft.format(area(first, 3, clubs.length, 2), "+0.0;-0.0;0.0");
}

/** Grams of head that make a point on this very club; null where its model cannot say. */
function headGrams(club: PlannedClub): number | null {
  const found = sensitivities(club.parts);
  if (isProblem(found)) return null;
  const head = found.find(({ part }) => part === "head")!;
  return head.change / head.points;
}

/**
 * Grams at head and butt that bring the measured swingweight to its target. Weight at the butt only lightens it. None
 * while the length is to be put right: half an inch is worth some three points, and the grams would be undone by the saw.
 */
function gramsToAdd(layout: BuildLayout, club: number): [FormulaCell, FormulaCell] {
  const row = layout.adjustClubs + club;
  const [mark, off] = [layout.mark("swingweight", club), layout.difference("swingweight", club)];
  const length = layout.mark("length", club);
  const [head, butt] = [cellName(row, 1, "column"), cellName(row, 2, "column")];
  return [
    formula(`IF(AND(${mark}="adjust",${length}<>"adjust",ISNUMBER(${head})),-${off}*${head},"")`, ""),
    formula(`IF(AND(${mark}="adjust",${length}<>"adjust"),IF(${off}>0,-${off}*${butt},""),"")`, ""),
  ];
}

/** One sentence for each mark that says adjust, length first since it moves the swingweight; then how many pass. */
function words(job: BenchJob, layout: BuildLayout, club: number): FormulaCell {
  const row = layout.adjustClubs + club;
  const size = (cell: string, digits: number) => `ROUND(ABS(${cell}),${digits})`;
  const [head, butt] = [cellName(row, 3, "column"), cellName(row, 4, "column")];
  const length = layout.measured("length", club);
  const { unit, shown, decimals } = benchLengths(job.units ?? "us");
  const most = job.request.clubs[club]!.putter ? 1000 : shown(lengthRule.greatest);
  const where = (key: CheckedFigure["key"], over: string, under: string) => {
    const off = layout.difference(key, club);
    return `IF(${layout.mark(key, club)}="adjust",IF(${off}>0,${over},${under}),"")`;
  };
  const by = (key: CheckedFigure["key"], digits: number) => size(layout.difference(key, club), digits);
  // A bend past what the heads' maker allows is no advice to print.
  const limit = job.request.bendLimit;
  const bend = (key: "loft" | "lie", over: string, under: string) => {
    const told = (way: string) => {
      const sentence = `"Bend "&${by(key, 2)}&"° ${way}. "`;
      const name = key === "loft" ? "Loft" : "Lie";
      return limit === undefined
        ? sentence
        : `IF(${by(key, 2)}>${limit},"${name} is past the bend limit: ask the maker. ",${sentence})`;
    };
    return where(key, told(over), told(under));
  };
  const swingweight = where(
    "swingweight",
    `"Take "&${size(head, 1)}&" g off the head, or put "&${size(butt, 1)}&" g in the butt. "`,
    `"Add "&${size(head, 1)}&" g at the head: tip weight or tape. "`,
  );
  // What is glued can be made neither softer nor stiffer; the shaft is looked at again.
  const plays = (way: string) =>
    `"Plays "&${by("frequency", 0)}&" cpm ${way}: check the shaft and its tip trim. "`;
  const figures = figuresOf(job);
  const marks = areaName(area(layout.checkClubs + club, 1, 1, figures.length * PER_FIGURE), "both");
  const passed = `COUNTIF(${marks},"pass")`;
  const marked = `(${passed}+COUNTIF(${marks},"adjust"))`;
  const parts = [
    `IF(ISNUMBER(${length}),IF(OR(${length}<${shown(lengthRule.least)},${length}>${most}),"Length is outside the Rules of Golf. ",""),"")`,
    where(
      "length",
      `"Cut "&${by("length", decimals)}&" ${unit} off the butt. "`,
      `"Extend the butt "&${by("length", decimals)}&" ${unit}. "`,
    ),
    where(
      "shaft",
      `"Take a shaft "&${by("shaft", 1)}&" g lighter. "`,
      `"Take a shaft "&${by("shaft", 1)}&" g heavier. "`,
    ),
    `IF(${layout.mark("length", club)}="adjust",IF(${layout.mark("swingweight", club)}="","","Then measure swingweight again. "),${swingweight})`,
    bend("loft", "stronger", "weaker"),
    bend("lie", "flatter", "more upright"),
    figures.includes(FREQUENCY) ? where("frequency", plays("stiff"), plays("soft")) : "",
    where(
      "total",
      `"Total is "&${by("total", 1)}&" g over: weigh the parts again. "`,
      `"Total is "&${by("total", 1)}&" g under: weigh the parts again. "`,
    ),
    `IF(${marked}=0,"",${passed}&" of "&${marked}&" pass.")`,
  ];
  return formula(parts.filter((part) => part !== "").join("&"), "");
}

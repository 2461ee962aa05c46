import { partsList } from "../club/parts-list.ts";
import { areaName } from "./a1.ts";
import type { BenchJob } from "./bench-job.ts";
import { benchWords } from "./bench-words.ts";
import { area, formula, type SheetDraft } from "./sheet-draft.ts";

/** Columns that the list takes: three for the part, one for how many, one for grams. */
export const PARTS_COLUMNS = 5;
const NAME = 3;
/** Letters that fit one line of these columns; longer names wrap in smaller type. */
const SHORT = 20;

/** What the set takes, with native totals. Answers the next free row. */
export function putParts(draft: SheetDraft, job: BenchJob, row: number, column: number): number {
  const lines = partsList(job.plan);
  const first = row + 1;
  draft.putAcross(row, column, NAME, "Parts list", "headingLeft");
  draft.put(row, column + NAME, [["Pieces", "Grams in all"]], "headingCentre");
  lines.forEach(({ part, count, weight }, index) => {
    const name = partWords(part, job);
    draft.putAcross(first + index, column, NAME, name, name.length > SHORT ? "small" : "label");
    draft.put(first + index, column + NAME, [[count, weight]], "figure");
  });
  const end = first + lines.length;
  const total = (step: number, value: number) =>
    formula(`SUM(${areaName(area(first, column + NAME + step, lines.length))})`, value);
  const sum = (of: (line: (typeof lines)[number]) => number) =>
    lines.reduce((all, line) => all + of(line), 0);
  draft.putAcross(end, column, NAME, "Total", "label");
  draft.put(
    end,
    column + NAME,
    [
      [
        total(
          0,
          sum(({ count }) => count),
        ),
        total(
          1,
          sum(({ weight }) => weight),
        ),
      ],
    ],
    "figureStrong",
  );
  draft.format(area(first, column + NAME, lines.length + 1), "0");
  // Ten kilograms and more would not fit the column with their tenths.
  const grams = sum(({ weight }) => weight) >= 9999.95 ? "0" : "0.0";
  draft.format(area(first, column + NAME + 1, lines.length + 1), grams);
  return end + 1;
}

/** A part with what the chosen build tells of it: "Raw shaft: 105 g mid-launch", or "Raw shaft: 102 to 117 g, mid". */
function partWords(part: string, job: BenchJob): string {
  const { build, plan } = job;
  const weights = plan.clubs.map(({ shaftWeight }) => shaftWeight);
  const [least, most] = [Math.min(...weights), Math.max(...weights)].map((weight) =>
    Number(weight.toFixed(1)),
  );
  // A name that says a weight would be wrong of shafts that step.
  const shaft =
    least === build.weight && most === least
      ? build.name
      : benchWords(job)(range(least!, most!, build.profile));
  const told = part === "raw shaft" ? [shaft, build.flex] : part === "head" ? [build.head] : [];
  const words = told.filter((word) => word !== undefined && word !== "").join(", ");
  const name = part.charAt(0).toUpperCase() + part.slice(1);
  return words === "" ? name : `${name}: ${words}`;
}

function range(least: number, most: number, profile: string | undefined): string {
  const weights = least === most ? `${least} g` : `${least} to ${most} g`;
  return profile === undefined ? weights : `${weights}, ${profile}`;
}

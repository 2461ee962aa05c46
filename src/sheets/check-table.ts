import { cellName } from "./a1.ts";
import type { BenchJob } from "./bench-job.ts";
import { benchWords } from "./bench-words.ts";
import { type BuildLayout, LABELS, PER_FIGURE } from "./build-layout.ts";
import { type CheckedFigure, figuresOf } from "./checked-figures.ts";
import type { CellValue } from "./plan.ts";
import { area, formula, type SheetDraft } from "./sheet-draft.ts";
import { pointsFormula } from "./swingweight-formula.ts";

/** Points of a row in which measurements can be written by hand on the printed sheet. */
const WRITABLE = 20;

/** What to measure on the built clubs: target, measured, difference and mark of each figure, a row a club. */
export function putCheck(draft: SheetDraft, job: BenchJob, layout: BuildLayout): void {
  const { check: row, checkClubs: first } = layout;
  const { clubs } = job.plan;
  draft.put(row, LABELS, [["Check"], [null]], "headingCentre");
  draft.put(
    first,
    LABELS,
    clubs.map(({ club }) => [club]),
    "label",
  );
  for (const figure of figuresOf(job)) {
    const column = layout.columnOf(figure.key);
    draft.putAcross(row, column, PER_FIGURE, `${figure.label}, ${figure.unit}`, "headingCentre");
    draft.put(row + 1, column, [["Target", "Measured", "Differ-ence", "Mark"]], "headingCentre");
    draft.put(
      first,
      column,
      clubs.map((club, index) => checkCells(figure, figure.target(club), index, layout)),
      "figure",
    );
    const body = (step: number) => area(first, column + step, clubs.length);
    draft.style(body(1), "input");
    draft.format(area(first, column, clubs.length, 2), figure.format);
    draft.format(body(2), figure.differenceFormat);
    draft.style(body(3), "figureStrong");
    if (figure.key !== "swingweight") {
      draft.validate({
        area: body(1),
        kind: "number",
        least: 0,
        most: figure.most,
        message: `${figure.label} as measured: a number, or nothing yet.`,
      });
    }
    const mark = layout.mark(figure.key, 0);
    draft.condition({ area: body(3), formula: `${mark}="pass"`, style: "good" });
    draft.condition({ area: body(3), formula: `${mark}="adjust"`, style: "bad" });
  }
  const code = layout.columnOf("swingweight") + 1;
  draft.note(row + 1, code, benchWords(job)("Type the swingweight as the scale reads it: D2 or D2.3."));
  draft.height(row, 18);
  draft.height(row + 1, 32);
  draft.height(first, WRITABLE, clubs.length);
}

/** Target, an empty cell for the measurement, difference and mark; nothing measured gives no mark. */
function checkCells(
  { key }: CheckedFigure,
  target: number | string | null,
  club: number,
  layout: BuildLayout,
): CellValue[] {
  const planned = layout.planColumns.findIndex(({ checks }) => checks === key);
  const source = cellName(layout.planClubs + club, 1 + planned, "column");
  const [wanted, found] = [layout.target(key, club), layout.measured(key, club)];
  const [off, allowed] = [layout.difference(key, club), layout.tolerance(key)];
  const difference =
    key === "swingweight"
      ? `IF(OR(${found}="",${wanted}=""),"",IFERROR(${pointsFormula(found)}-(${pointsFormula(wanted)}),"code?"))`
      : `IF(ISNUMBER(${found}),IF(ISNUMBER(${wanted}),${found}-${wanted},""),IF(${found}="","","number?"))`;
  return [
    target === null ? null : formula(source, target),
    null,
    formula(difference, ""),
    formula(
      `IF(AND(ISNUMBER(${off}),ISNUMBER(${allowed})),IF(ROUND(ABS(${off}),6)<=${allowed},"pass","adjust"),"")`,
      "",
    ),
  ];
}

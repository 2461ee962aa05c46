import { lengthRule } from "../club/check-length.ts";
import { ADJUST_COLUMNS, putAdjust } from "./adjust-table.ts";
import type { BenchJob } from "./bench-job.ts";
import { benchWords } from "./bench-words.ts";
import { buildLayout } from "./build-layout.ts";
import { buildSteps, FIRST_OF_ALL, LENGTHS_CONFORM } from "./build-steps.ts";
import { putCheck } from "./check-table.ts";
import { CHECKED_FIGURES } from "./checked-figures.ts";
import { freeSheetName, type Taken } from "./free-names.ts";
import { PARTS_COLUMNS, putParts } from "./parts-table.ts";
import type { SheetPlan, WorkbookPlan } from "./plan.ts";
import { putPlan } from "./plan-table.ts";
import { putSensitivities } from "./sensitivity-table.ts";
import { area, SheetDraft } from "./sheet-draft.ts";
import { putTolerances } from "./tolerance-strip.ts";

/** Rows of title, facts and the line that comes first. */
const HEAD_ROWS = 3;

/** The Build sheet as a workbook of its own, its name free beside the sheets that are there. */
export function buildWorkbook(job: BenchJob, taken: Taken, made: string): WorkbookPlan {
  const name = freeSheetName("Build", taken.sheets);
  return { sheets: [buildSheet(job, name, made)], names: [], active: name };
}

/**
 * The Build sheet, which prints on one page: what to cut and build, a row a club; the same clubs to check against
 * what was measured, with marks that native formulas work out; what to do where a mark says adjust; parts, rules of
 * thumb beside the model's own figures, and the steps. `made`: the moment of planning, as text.
 */
export function buildSheet(job: BenchJob, name: string, made: string): SheetPlan {
  const draft = new SheetDraft(name);
  const remarks = remarksOf(job);
  const words = benchWords(job);
  const layout = buildLayout(job, HEAD_ROWS + remarks.length + 1);
  const { columns } = layout;
  draft.putAcross(0, 0, columns, `Build sheet: ${job.request.name ?? job.build.name}`, "title", 28);
  draft.putAcross(1, 0, columns, factsLine(job, made), "subtitle", 18);
  draft.putAcross(2, 0, columns, FIRST_OF_ALL, "sentenceStrong", 20);
  remarks.forEach(({ text, warns }, index) => {
    draft.putAcross(HEAD_ROWS + index, 0, columns, words(text), warns ? "warning" : "small", warns ? 16 : 14);
  });
  putTolerances(draft, job, layout);
  putPlan(draft, job, layout);
  putCheck(draft, job, layout);
  putAdjust(draft, job, layout);
  const partsColumn = ADJUST_COLUMNS + 1;
  const parts = putParts(draft, job, layout.adjust, partsColumn);
  const moves = putSensitivities(draft, job, layout.adjust, partsColumn + PARTS_COLUMNS + 1);
  let row = 1 + Math.max(parts, moves, layout.adjustClubs + job.plan.clubs.length);
  draft.putAcross(row++, 0, columns, "Steps and cautions", "headingLeft");
  buildSteps(job).forEach((step, index) => {
    draft.putAcross(row++, 0, columns, `${index + 1}. ${words(step)}`, "sentence", 15);
  });
  draft.width(0, 1, 13);
  draft.width(1, columns - 1, 7.3);
  for (const { key } of CHECKED_FIGURES) draft.width(layout.columnOf(key) + 1, 1, 10);
  draft.print({
    landscape: true,
    area: area(0, 0, row, columns),
    pagesWide: 1,
    pagesTall: 1,
    footer: factsLine(job, made),
  });
  return draft.plan();
}

/** Warnings of the plan; where no length breaks the Rules, a line that says so; what was taken for want of entries. */
function remarksOf({
  plan,
  request,
  warnings,
  notes: taken = [],
}: BenchJob): { text: string; warns: boolean }[] {
  const conform = request.clubs.every(
    ({ length, putter }) => length >= lengthRule.least && (putter || length <= lengthRule.greatest),
  );
  const blind = request.clubs.filter(({ bore }) => bore === undefined).length;
  const uncut = request.clubs.filter(({ rawLength }) => rawLength === undefined).length;
  const { target } = plan.clubs[0]!;
  const notes = [
    // First, for a shaft is cut once: most bores stop about an inch short of the ground (common practice, no source).
    blind > 0
      ? `Bore was not entered for ${blind} of ${plan.clubs.length} clubs: their cut length counts the shaft as reaching the ground. Fit the head dry, measure how far the tip stops short, and take that off.`
      : "",
    ...taken,
    target.kind === "inertia"
      ? `Built to one moment of inertia, ${target.inertia.toFixed(0)} kg cm2 about the butt: check it by the pendulum's period; the swingweights follow from it.`
      : "",
    conform ? LENGTHS_CONFORM : "",
    uncut > 0
      ? `Raw shaft length was not entered for ${uncut} of ${plan.clubs.length} clubs: their shafts count as just long enough, nothing off the butt.`
      : "",
  ];
  return [
    ...warnings.map((text) => ({ text, warns: true })),
    ...notes.flatMap((text) => (text === "" ? [] : [{ text, warns: false }])),
  ];
}

function factsLine({ build, player, date, place }: BenchJob, made: string): string {
  const profile = build.profile === undefined ? "" : `${build.profile} profile`;
  const parts = [
    `Build ${build.name}`,
    build.flex,
    profile,
    build.head,
    player,
    date,
    place,
    `planned ${made}`,
  ];
  return parts.filter((part) => part !== undefined && part !== "").join(" · ");
}

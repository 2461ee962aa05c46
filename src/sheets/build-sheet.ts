import { ADJUST_COLUMNS, putAdjust } from "./adjust-table.ts";
import type { BenchJob } from "./bench-job.ts";
import { benchWords } from "./bench-words.ts";
import { buildLayout } from "./build-layout.ts";
import { buildRemarks } from "./build-remarks.ts";
import { buildSteps, FIRST_OF_ALL } from "./build-steps.ts";
import { putCheck } from "./check-table.ts";
import { figuresOf } from "./checked-figures.ts";
import { freeSheetName, type Taken } from "./free-names.ts";
import { PARTS_COLUMNS, putParts } from "./parts-table.ts";
import type { SheetPlan, WorkbookPlan } from "./plan.ts";
import { putPlan } from "./plan-table.ts";
import { putSensitivities } from "./sensitivity-table.ts";
import { area, SheetDraft } from "./sheet-draft.ts";
import { putTolerances } from "./tolerance-strip.ts";

/** Clubs in a bag by the Rules of Golf (4.1b); a longer list runs on to further pages, where one would be too small to read. */
const ONE_PAGE = 14;
/** Rows of title, facts and the line that comes first. */
const HEAD_ROWS = 3;

/** The Build sheet as a workbook of its own, its name free beside the sheets that are there. */
export function buildWorkbook(job: BenchJob, taken: Taken, made: string): WorkbookPlan {
  const name = freeSheetName("Build", taken.sheets);
  return { sheets: [buildSheet(job, name, made)], names: [], active: name };
}

/**
 * The Build sheet, which prints on one page for any bag: what to cut and build, a row a club; the same clubs to check against
 * what was measured, with marks that native formulas work out; what to do where a mark says adjust; parts, rules of
 * thumb beside the model's own figures, and the steps. `made`: the moment of planning, as text.
 */
export function buildSheet(job: BenchJob, name: string, made: string): SheetPlan {
  const draft = new SheetDraft(name);
  const remarks = buildRemarks(job);
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
  for (const { key } of figuresOf(job)) draft.width(layout.columnOf(key) + 1, 1, 10);
  draft.print({
    landscape: true,
    area: area(0, 0, row, columns),
    pagesWide: 1,
    pagesTall: job.plan.clubs.length > ONE_PAGE ? 0 : 1,
    footer: factsLine(job, made),
  });
  return draft.plan();
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

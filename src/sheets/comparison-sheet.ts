import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import { putGroupChart, putLimitsChart } from "./comparison-charts.ts";
import { BEFORE_BUILDS, PER_BUILD, putDifferences, putMeans } from "./comparison-table.ts";
import { evidenceFormula } from "./evidence.ts";
import type { SheetPlan } from "./plan.ts";
import { area, SheetDraft } from "./sheet-draft.ts";
import type { ShotsLayout } from "./shots-layout.ts";
import { type WorkingsLayout, workingsSheet } from "./workings-sheet.ts";

const CHART_ROWS = 16;

/**
 * The Comparison sheet, which prints on one page: who and when, what the figures say in words, two pictures, then
 * averages and differences build beside build. Averages and differences are alive; sentences carry the moment they
 * were worked out and say when the shots have changed since. Answers it together with its workings.
 */
export function comparisonSheets(
  session: Session,
  comparison: Comparison,
  shots: ShotsLayout,
  layout: WorkingsLayout,
  name: string,
  words: readonly string[],
  made: string,
): [comparison: SheetPlan, workings: SheetPlan] {
  const draft = new SheetDraft(name);
  const workings = workingsSheet(session, comparison, shots, layout);
  const columns = Math.max(BEFORE_BUILDS + session.builds.length * PER_BUILD, 11);
  draft.putAcross(0, 0, columns, session.title, "title", 28);
  draft.putAcross(1, 0, columns, factsLine(session), "subtitle");

  let row = 3;
  for (const sentence of words) {
    draft.putAcross(row++, 0, columns, sentence, "sentence", 18);
  }
  draft.putAcross(row++, 0, columns, evidenceFormula(session, shots, made), "small", 15);
  row++;

  const half = Math.floor(columns / 2);
  const left = putGroupChart(
    draft,
    workings,
    session,
    comparison,
    shots,
    layout,
    area(row, 0, CHART_ROWS, half),
  );
  const right = putLimitsChart(
    draft,
    workings,
    session,
    comparison,
    layout,
    area(row, half, CHART_ROWS, columns - half),
  );
  if (left || right) row += CHART_ROWS + 1;

  row = putMeans(draft, session, comparison, shots, layout, row) + 1;
  if (session.builds.length > 1) row = putDifferences(draft, session, comparison, shots, layout, row) + 1;
  for (const line of FOOTNOTES) draft.putAcross(row++, 0, columns, line, "small", 26);

  draft.width(0, 1, 20);
  draft.width(1, 1, 6);
  draft.width(BEFORE_BUILDS, columns - BEFORE_BUILDS, 9);
  draft.print({
    landscape: false,
    area: area(0, 0, row, columns),
    pagesWide: 1,
    pagesTall: 1,
    footer: factsLine(session),
  });
  return [draft.plan(), workings.plan()];
}

const FOOTNOTES = [
  "Mean: the average of the kept shots. SD: how far single shots typically lie from it. ± 95 %: the average would lie this close to the true one in 95 of 100 such sessions. Right of the target is plus, left is minus.",
  "Shaded differences have limits on one side of 0. Each stands alone: among many, one in twenty is shaded by chance. Before every session check the net and keep people clear of the ball's way.",
];

function factsLine(session: Session): string {
  const club = new Set(session.table.club.filter((one) => one !== ""));
  const parts = [session.player, ...(club.size <= 3 ? club : []), session.date, session.place];
  if (session.leftHanded) parts.push("left-handed");
  return parts.filter((part) => part !== "").join(" · ") || "Player, date and place can be typed here";
}

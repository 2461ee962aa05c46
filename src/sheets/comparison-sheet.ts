import type { GoalChances } from "../fitting/chances.ts";
import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import type { SessionFlight } from "../fitting/session-flight.ts";
import type { VerdictWords } from "../fitting/verdict-words.ts";
import { putChanceChart } from "./chance-chart.ts";
import { putGroupChart, putLimitsChart } from "./comparison-charts.ts";
import { BEFORE_BUILDS, PER_BUILD, putComparisonTable } from "./comparison-table.ts";
import { evidenceFormula } from "./evidence.ts";
import { putFlightChart } from "./flight-chart.ts";
import type { SheetPlan } from "./plan.ts";
import { putSameAir } from "./same-air-block.ts";
import { area, SheetDraft } from "./sheet-draft.ts";
import type { ShotsLayout } from "./shots-layout.ts";
import { putVerdict } from "./verdict-block.ts";
import { putWindows } from "./windows-block.ts";
import { type WorkingsLayout, workingsSheet } from "./workings-sheet.ts";

const CHART_ROWS = 15;
const FLIGHT_ROWS = 13;
const FIRST_ROW = 3;
const LEAST_COLUMNS = 12;

/** Everything that the Comparison sheet shows, in the units that it shows. */
export interface ComparisonParts {
  readonly session: Session;
  readonly comparison: Comparison;
  readonly shots: ShotsLayout;
  readonly workings: WorkingsLayout;
  readonly name: string;
  readonly words: VerdictWords;
  readonly warnings: readonly string[];
  /** Null where there is no verdict yet. */
  readonly chances: GoalChances | null;
  /** What the flight model says, in yards and feet. */
  readonly flight: SessionFlight;
  /** When the words were worked out, as text. */
  readonly made: string;
}

/**
 * The Comparison sheet, which prints on one page: who and when, the verdict in words, pictures, then the table of
 * builds side by side and the target windows. The table and the windows are alive; words carry the moment they were
 * worked out and say when the shots have changed since. Answers it together with its workings.
 */
export function comparisonSheets(parts: ComparisonParts): [comparison: SheetPlan, workings: SheetPlan] {
  const { session, comparison, shots, workings: layout, words, chances, flight } = parts;
  const draft = new SheetDraft(parts.name);
  const workings = workingsSheet(session, comparison, shots, layout);
  const columns = Math.max(BEFORE_BUILDS + session.builds.length * PER_BUILD, LEAST_COLUMNS);
  draft.putAcross(0, 0, columns, session.title, "title", 28);
  draft.putAcross(1, 0, columns, factsOf(session) || "Player, date and place can be typed here", "subtitle");

  // The table's place follows from the number of lines above it, the evidence line's formula from the table's place.
  const lines = verdictLines(parts);
  const chartRow = FIRST_ROW + lines + 1;
  const third = Math.floor(columns / 3);
  const wide = columns - 2 * third;
  const left = area(chartRow, 0, CHART_ROWS, third);
  // Without chances the group's picture takes their place as well, so that no hole is left.
  const group = chances
    ? area(chartRow, third, CHART_ROWS, wide)
    : area(chartRow, 0, CHART_ROWS, third + wide);
  const right = area(chartRow, third + wide, CHART_ROWS, third);
  if (chances) putChanceChart(draft, workings, layout.sheet, chances, session.builds.length, left);
  putGroupChart(draft, workings, session, comparison, shots, layout, group);
  putLimitsChart(draft, workings, session, comparison, layout, right);

  const below = chartRow + CHART_ROWS;
  const whole = area(below, 0, FLIGHT_ROWS, columns);
  const flown = putFlightChart(draft, workings, layout.sheet, session, flight, whole);
  const tableRow = below + (flown ? FLIGHT_ROWS : 0) + 1;
  const table = putComparisonTable(draft, session, comparison, shots, layout, tableRow);
  const afterTable = putSameAir(draft, workings, session, flight, layout, parts.made, table) + 1;
  const windows = putWindows(draft, session, shots, layout, afterTable);
  putVerdict(
    draft,
    words,
    parts.warnings,
    evidenceFormula(session, comparison, shots, layout, parts.made, windows.limits),
    FIRST_ROW,
    columns,
  );
  let row = windows.end + 1;
  for (const line of FOOTNOTES) draft.putAcross(row++, 0, columns, line, "small", 26);

  draft.width(0, 1, 17);
  draft.width(1, 1, 5);
  draft.width(BEFORE_BUILDS, columns - BEFORE_BUILDS, 7.5);
  draft.print({
    landscape: false,
    area: area(0, 0, row, columns),
    pagesWide: 1,
    pagesTall: 1,
    footer: factsOf(session) || session.title,
  });
  return [draft.plan(), workings.plan()];
}

/** Headline, sentences, warnings and the evidence line. */
function verdictLines({ words, warnings }: ComparisonParts): number {
  const sentences = [...words.reasons, ...words.costs, words.next].filter((text) => text !== "");
  return 1 + sentences.length + warnings.length + 1;
}

const FOOTNOTES = [
  "Mean: the average of the kept shots. SD: how far single shots typically lie from it. Change: against the baseline; shaded where it is larger than its ± 95 %. Each change stands alone: among many, one in twenty is shaded by chance. Right of the target is plus, left is minus.",
  "Target windows are common practice until you type your own over them; Inside is the share of kept shots between them. Before every session check the net and keep people clear of the ball's way.",
  "All formulas here are the spreadsheet's own: this workbook calculates without the add-in too.",
];

/** Who, which club, when and where, as far as it was said. */
function factsOf(session: Session): string {
  const club = new Set(session.table.club.filter((one) => one !== ""));
  const parts = [session.player, ...(club.size <= 3 ? club : []), session.date, session.place];
  if (session.leftHanded) parts.push("left-handed");
  return parts.filter((part) => part !== "").join(" · ");
}

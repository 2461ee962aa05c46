import type { PlayerWords } from "../fitting/player-words.ts";
import type { Session } from "../fitting/session.ts";
import { metricOf } from "../shots/metrics.ts";
import { showing } from "../shots/showing.ts";
import { numberFormat, unitText } from "./display-session.ts";
import type { ChartPlan, FormulaCell, SheetPlan } from "./plan.ts";
import { area, formula, SheetDraft } from "./sheet-draft.ts";
import type { WorkingsLayout } from "./workings-sheet.ts";

/** Widths of the columns, in characters: figure, what it is, two builds, a gap, what changed. */
const WIDTHS = [18, 14, 14, 14, 13, 13, 1.5, 21, 21];
const COLUMNS = WIDTHS.length;
/** Letters of a sentence that surely fit one line across the page. */
const LETTERS = 122;
const SMALL_LETTERS = 155;
/** The same of what changed, in its columns. */
const CHANGE_LETTERS = 38;
/** Two lines of what a figure is. */
const MEANING_LINES = 24;
const LINE = 15.5;
const CHART_ROWS = 17;

/** What the page draws on beside its words. */
export interface PlayerParts {
  readonly session: Session;
  readonly words: PlayerWords;
  readonly workings: WorkingsLayout;
  readonly name: string;
  /** Charts of the Comparison sheet that a player follows too. */
  readonly charts: readonly ChartPlan[];
  /** A line that says when the words were worked out and whether the shots have changed since. */
  readonly evidence: FormulaCell;
}

/**
 * The player's page, to print and take home: what was tried, what we suggest and why, how sure that is, two pictures,
 * what changed figure by figure, and a line for every word that needs one. Shop, date and names can be typed in.
 */
export function playerSheet(parts: PlayerParts): SheetPlan {
  const { session, words, name, charts, evidence } = parts;
  const draft = new SheetDraft(name);
  WIDTHS.forEach((characters, column) => {
    draft.width(column, 1, characters);
  });
  draft.putAcross(0, 0, COLUMNS, "Your fitting in plain words", "title", 28);
  draft.putAcross(1, 0, COLUMNS, session.title, "subtitle", 18);
  let row = putFacts(draft, session, 2) + 1;
  const heading = (text: string) => draft.putAcross(row++, 0, COLUMNS, text, "group", 20);
  const lines = (sentences: readonly string[]) => {
    for (const sentence of sentences) {
      const points = Math.ceil(sentence.length / LETTERS) * LINE + 2;
      draft.putAcross(row++, 0, COLUMNS, sentence, "sentence", points);
    }
  };
  heading("What you tried");
  lines(words.tried);
  heading("What we suggest, and why");
  draft.putAcross(row++, 0, COLUMNS, words.suggestion, "sentenceStrong", 24);
  lines(words.why);
  heading("How sure that is");
  lines(words.sure);
  if (charts.length > 0) row = putPictures(draft, charts, row);
  if (words.between) row = putChanges(draft, parts, row);
  heading("Words on this page");
  for (const meaning of words.meanings) {
    draft.putAcross(row++, 0, COLUMNS, meaning, "small", Math.ceil(meaning.length / SMALL_LETTERS) * 12 + 1);
  }
  draft.putAcross(row++, 0, COLUMNS, evidence, "small", 14);
  draft.print({ landscape: false, area: area(0, 0, row, COLUMNS), pagesWide: 1, pagesTall: 1 });
  return draft.plan();
}

/** Who, when and where, in cells that are there to be typed over. Answers the next free row. */
function putFacts(draft: SheetDraft, { player, date, place, leftHanded }: Session, from: number): number {
  const facts = [
    ["Player", player, "Shop", place],
    ["Date", date, "Fitted by", ""],
  ] as const;
  facts.forEach(([left, leftText, right, rightText], i) => {
    draft.put(from + i, 0, [[left]], "label");
    draft.putAcross(from + i, 1, 3, leftText || null, "input", 19);
    draft.put(from + i, 4, [[right]], "label");
    draft.putAcross(from + i, 5, COLUMNS - 5, rightText || null, "input", 19);
  });
  if (!leftHanded) return from + facts.length;
  draft.put(from + facts.length, 0, [["Plays"]], "label");
  draft.putAcross(from + facts.length, 1, 3, "Left-handed", "input", 19);
  return from + facts.length + 1;
}

/** Pictures side by side across the page. Answers the next free row. */
function putPictures(draft: SheetDraft, charts: readonly ChartPlan[], from: number): number {
  const wide = Math.floor(COLUMNS / charts.length);
  charts.forEach((chart, i) => {
    const last = i === charts.length - 1;
    draft.chart({ ...chart, area: area(from, i * wide, CHART_ROWS, last ? COLUMNS - i * wide : wide) });
  });
  return from + CHART_ROWS + 1;
}

/** The averages of two builds beside each other, alive, each with what the figure is. Answers the next free row. */
function putChanges(draft: SheetDraft, { session, words, workings }: PlayerParts, from: number): number {
  const { from: was, to: is } = words.between!;
  const headings = [
    "What changed, on average",
    null,
    null,
    null,
    was,
    is,
    null,
    "From the one to the other",
    null,
  ];
  draft.put(from, 0, [headings], "headingLeft");
  draft.merge(area(from, 0, 1, 4));
  draft.merge(area(from, 7, 1, 2));
  draft.style(area(from, 4, 1, 2), "headingCentre");
  draft.height(from, 32);
  words.changes.forEach(({ metric: key, label, meaning, from: before, to: after, words: said }, i) => {
    const row = from + 1 + i;
    const metric = metricOf(key);
    const unit = unitText(metric, session.units);
    const shown = showing(metric, session.units);
    draft.put(row, 0, [[unit === "" ? label : `${label}, ${unit}`]], "label");
    draft.putAcross(row, 1, 3, meaning, "small", said.length > CHANGE_LETTERS ? 2 * LINE : MEANING_LINES);
    const cells = [
      formula(workings.cell(was, key, "Mean"), shown(before)),
      formula(workings.cell(is, key, "Mean"), shown(after)),
    ];
    draft.put(row, 4, [cells], "figure", numberFormat(metric.decimals));
    draft.putAcross(row, 7, 2, said, "sentence");
  });
  return from + 1 + words.changes.length;
}

import { compareBuilds } from "../fitting/compare-builds.ts";
import { decide } from "../fitting/decide.ts";
import { deliveryDoubts } from "../fitting/delivery-doubts.ts";
import { computedWords } from "../fitting/filled-session.ts";
import { impossibleWords } from "../fitting/impossible-words.ts";
import { driftWarnings } from "../fitting/order-drift.ts";
import { outlierWords } from "../fitting/outlier-words.ts";
import { type PlayerWords, playerWords } from "../fitting/player-words.ts";
import type { Session } from "../fitting/session.ts";
import { sessionFlight } from "../fitting/session-flight.ts";
import { type VerdictWords, verdictWords } from "../fitting/verdict-words.ts";
import { weightWords } from "../fitting/weight-words.ts";
import { isProblem } from "../outcome/problem.ts";
import { proposeOutliers } from "../shots/screening.ts";
import { cellName, sheetName } from "./a1.ts";
import { comparisonSheets } from "./comparison-sheet.ts";
import { displaySession } from "./display-session.ts";
import { freeAreaName, freeSheetName, type Taken } from "./free-names.ts";
import type { FormulaCell, SheetPlan, WorkbookPlan } from "./plan.ts";
import { playerSheet } from "./player-sheet.ts";
import { remarksOf } from "./remarks.ts";
import { sessionWords } from "./session-words.ts";
import { shotsLayout } from "./shots-layout.ts";
import { shotsSheet } from "./shots-sheet.ts";
import { workingsLayout } from "./workings-sheet.ts";

/**
 * The sheets of a session: Comparison, the player's page, Shots and, out of sight, Workings. Their names are free in
 * the workbook they are meant for. `made` is the moment, as text, that written sentences carry.
 */
export function comparisonWorkbook(session: Session, taken: Taken, made: string): WorkbookPlan {
  const shown = displaySession(session);
  const names: string[] = [];
  for (const wish of ["Comparison", "Player", "Shots", "Workings"])
    names.push(freeSheetName(wish, [...taken.sheets, ...names]));
  const [comparisonName, playerName, shotsName, workingsName] = names as [string, string, string, string];
  const shots = shotsLayout(shown, shotsName);
  const workings = workingsLayout(shown, shots, workingsName);
  const decision = decide(session);
  const local = sessionWords(session);
  const [comparisonPlan, workingsPlan] = comparisonSheets({
    session: shown,
    comparison: compareBuilds(shown),
    shots,
    workings,
    name: comparisonName,
    words: localVerdict(verdictWords(session, decision), local),
    warnings: [
      ...impossibleWords(session),
      ...computedWords(session),
      ...outlierWords(session),
      ...weightWords(session),
      ...driftWarnings(session),
    ].map(local),
    chances: isProblem(decision) ? null : decision.chances,
    flight: sessionFlight(session),
    made,
  });
  const remarks = remarksOf(session, [
    ...proposeOutliers(session.table, undefined, session.units),
    ...deliveryDoubts(session),
  ]);
  const said = new Map([...remarks].map(([shot, remark]) => [shot, local(remark)]));
  const shotsPlan = shotsSheet(shown, shotsName, freeAreaName("Shots", taken.names), said);
  const playerPlan = playerSheet({
    session,
    words: localPlayer(playerWords(session, decision), local),
    workings,
    name: playerName,
    charts: comparisonPlan.charts.filter(({ name }) => FOR_PLAYERS.has(name)),
    evidence: evidenceOf(comparisonPlan),
  });
  return {
    sheets: [comparisonPlan, playerPlan, shotsPlan, workingsPlan],
    names: [],
    active: comparisonName,
  };
}

function localVerdict(words: VerdictWords, local: (sentence: string) => string): VerdictWords {
  const { headline, reasons, costs, next } = words;
  return {
    headline: local(headline),
    reasons: reasons.map(local),
    costs: costs.map(local),
    next: local(next),
  };
}

function localPlayer(words: PlayerWords, local: (sentence: string) => string): PlayerWords {
  return {
    ...words,
    tried: words.tried.map(local),
    suggestion: local(words.suggestion),
    why: words.why.map(local),
    sure: words.sure.map(local),
    changes: words.changes.map((change) => ({ ...change, words: local(change.words) })),
    meanings: words.meanings.map(local),
  };
}

/** Pictures that a player follows without being told how. */
const FOR_PLAYERS = new Set(["Where the shots landed", "Chance of being best"]);

/** The line that tells whether the shots have changed, taken from where it is worked out. */
function evidenceOf({ name, blocks }: SheetPlan): FormulaCell {
  const [line] = blocks.flatMap(({ row, column, cells }): FormulaCell[] => {
    const cell = cells[0]![0];
    if (typeof cell !== "object" || !String(cell?.value).startsWith("Worked out")) return [];
    return [{ formula: `${sheetName(name)}!${cellName(row, column, "both")}`, value: cell!.value }];
  });
  return line!;
}

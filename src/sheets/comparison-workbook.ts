import { compareBuilds } from "../fitting/compare-builds.ts";
import { decide } from "../fitting/decide.ts";
import { driftWarnings } from "../fitting/order-drift.ts";
import type { Session } from "../fitting/session.ts";
import { verdictWords } from "../fitting/verdict-words.ts";
import { weightWords } from "../fitting/weight-words.ts";
import { isProblem } from "../outcome/problem.ts";
import { proposeOutliers } from "../shots/screening.ts";
import { comparisonSheets } from "./comparison-sheet.ts";
import { displaySession } from "./display-session.ts";
import { freeAreaName, freeSheetName, type Taken } from "./free-names.ts";
import type { WorkbookPlan } from "./plan.ts";
import { remarksOf } from "./remarks.ts";
import { shotsLayout } from "./shots-layout.ts";
import { shotsSheet } from "./shots-sheet.ts";
import { workingsLayout } from "./workings-sheet.ts";

/**
 * The sheets of a session: Comparison, Shots and, out of sight, Workings. Their names are free in the workbook they
 * are meant for. `made` is the moment, as text, that written sentences carry.
 */
export function comparisonWorkbook(session: Session, taken: Taken, made: string): WorkbookPlan {
  const shown = displaySession(session);
  const names: string[] = [];
  for (const wish of ["Comparison", "Shots", "Workings"])
    names.push(freeSheetName(wish, [...taken.sheets, ...names]));
  const [comparisonName, shotsName, workingsName] = names as [string, string, string];
  const shots = shotsLayout(shown, shotsName);
  const workings = workingsLayout(shown, shots, workingsName);
  const decision = decide(session);
  const [comparisonPlan, workingsPlan] = comparisonSheets({
    session: shown,
    comparison: compareBuilds(shown),
    shots,
    workings,
    name: comparisonName,
    words: verdictWords(session, decision),
    warnings: [...weightWords(session), ...driftWarnings(session)],
    chances: isProblem(decision) ? null : decision.chances,
    made,
  });
  const remarks = remarksOf(session, proposeOutliers(session.table));
  const shotsPlan = shotsSheet(shown, shotsName, freeAreaName("Shots", taken.names), remarks);
  return { sheets: [comparisonPlan, shotsPlan, workingsPlan], names: [], active: comparisonName };
}

import type { Session } from "../fitting/session.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import { benchJob } from "./bench-job.ts";
import { buildWorkbook } from "./build-sheet.ts";
import type { Taken } from "./free-names.ts";
import type { WorkbookPlan } from "./plan.ts";

/**
 * From a chosen build to its Build sheet in one step. `setText`: a set file as `readSetFile` reads it, or null for
 * the usual set that follows from the build. `made`: the moment, as text, that the sheet carries.
 */
export function benchWorkbook(
  session: Session,
  chosen: string,
  setText: string | null,
  taken: Taken,
  made: string,
): Outcome<WorkbookPlan> {
  const job = benchJob(session, chosen, setText);
  return isProblem(job) ? job : buildWorkbook(job, taken, made);
}

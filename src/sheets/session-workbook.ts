import type { Session } from "../fitting/session.ts";
import type { BenchJob } from "./bench-job.ts";
import { buildWorkbook } from "./build-sheet.ts";
import { comparisonWorkbook } from "./comparison-workbook.ts";
import { NOTHING_TAKEN } from "./free-names.ts";
import type { WorkbookPlan } from "./plan.ts";

/** A whole session for a new workbook: the comparison and, where a build was chosen, its Build sheet behind it. */
export function sessionWorkbook(session: Session, job: BenchJob | null, made: string): WorkbookPlan {
  const comparison = comparisonWorkbook(session, NOTHING_TAKEN, made);
  if (job === null) return comparison;
  const taken = { ...NOTHING_TAKEN, sheets: comparison.sheets.map(({ name }) => name) };
  const build = buildWorkbook(job, taken, made);
  return { ...comparison, sheets: [...comparison.sheets, ...build.sheets] };
}

import type { WorkbookPlan } from "../../sheets/plan.ts";

/**
 * The names under which new sheets are added before each gets its own. Nobody else uses them: should someone take
 * the name of a planned sheet at that very moment, the sheet that is ours can be told from theirs.
 */
export function sheetMarks(plan: WorkbookPlan): string[] {
  const random = crypto.randomUUID().slice(0, 8);
  return plan.sheets.map((_, i) => `Being written ${random} ${i + 1}`);
}

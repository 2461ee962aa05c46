import type { Outcome } from "../../outcome/problem.ts";
import { excelProblem } from "./excel-problem.ts";

/**
 * Options of every batch: wait while the user types in a cell instead of failing, and one undo step for the whole
 * batch. Spreadsheets that know neither pass over them.
 */
export const RUN_OPTIONS: Excel.RunOptions = { delayForCellEdit: true, mergeUndoGroup: true };

/** Runs a batch in the spreadsheet; an error becomes a problem with a sentence. */
export async function runExcel<T>(
  batch: (context: Excel.RequestContext) => Promise<Outcome<T>>,
): Promise<Outcome<T>> {
  try {
    return await Excel.run(RUN_OPTIONS, batch);
  } catch (error) {
    return excelProblem(error);
  }
}

import { areaName } from "../../sheets/a1.ts";
import type { WorkbookPlan } from "../../sheets/plan.ts";
import { fitsInFile } from "./file-validation.ts";

/** What a file cannot show as planned, a sentence each. */
export function fileNotes(plan: WorkbookPlan): readonly string[] {
  return plan.sheets.flatMap(({ name, validations }) =>
    validations
      .filter((rule) => !fitsInFile(rule))
      .map(
        ({ area }) =>
          `${areaName(area)} of "${name}" takes any text: its choices are too long for a list in a file, or one has a comma.`,
      ),
  );
}

import type { Area, SheetPlan } from "../../sheets/plan.ts";
import type { Grid, Sheet } from "./grid.ts";
import { gridRange } from "./grid-range.ts";

/** Tick boxes, lists and bounds. */
export function addValidations(grid: Grid, sheet: Sheet, plan: SheetPlan): void {
  const at = (area: Area) => sheet.getRange(gridRange(area));
  for (const area of plan.ticks) {
    // The two words make a click write TRUE or FALSE; without them it writes 1 or 0, which formulas tell apart.
    at(area).setDataValidation(grid.newDataValidation().requireCheckbox("TRUE", "FALSE").build());
  }
  for (const rule of plan.validations) {
    const begun = grid.newDataValidation();
    const bound =
      rule.kind === "list"
        ? begun.requireValueInList([...rule.choices])
        : begun.requireNumberBetween(rule.least, rule.most);
    const complete = bound
      .setAllowInvalid(false)
      .setAllowBlank(true)
      .setOptions({ error: rule.message, showErrorMessage: true, prompt: rule.message });
    at(rule.area).setDataValidation(complete.build());
  }
}

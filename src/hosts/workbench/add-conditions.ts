import type { SheetPlan } from "../../sheets/plan.ts";
import { CONDITION_STYLES } from "../../sheets/styles.ts";
import type { Sheet } from "./grid.ts";
import { gridRange } from "./grid-range.ts";

/** Looks that cells take while a formula holds. The grid puts a new rule before the others, so the last goes first. */
export function addConditions(sheet: Sheet, plan: SheetPlan): void {
  for (const { area, formula, style } of plan.conditions.toReversed()) {
    const look = CONDITION_STYLES[style];
    const rule = sheet
      .newConditionalFormattingRule()
      .whenFormulaSatisfied(`=${formula}`)
      .setFontColor(look.color);
    // Only what the look says: "not bold" would undo the cell's own.
    if (look.bold) rule.setBold(true);
    if (look.strike) rule.setStrikethrough(true);
    if (look.fill) rule.setBackground(look.fill);
    sheet.addConditionalFormattingRule(rule.setRanges([gridRange(area)]).build());
  }
}

import type { SheetPlan } from "../../sheets/plan.ts";
import { CONDITION_STYLES } from "../../sheets/styles.ts";
import { CALL, type Step } from "./step.ts";

/** Looks that cells take while a formula is TRUE. */
export function writeConditions(sheet: SheetPlan): Step[] {
  return sheet.conditions.map(({ area, formula, style }) => ({
    bytes: 6 * CALL,
    queue: (desk) => {
      const { custom } = desk.range(sheet.name, area).conditionalFormats.add("Custom");
      const { color, fill, bold, strike } = CONDITION_STYLES[style];
      custom.rule.formula = `=${formula}`;
      custom.format.font.color = color;
      if (bold) custom.format.font.bold = true;
      if (strike) custom.format.font.strikethrough = true;
      if (fill) custom.format.fill.color = fill;
    },
  }));
}

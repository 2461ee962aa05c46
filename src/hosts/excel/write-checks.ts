import type { Area, SheetPlan, ValidationPlan } from "../../sheets/plan.ts";
import { CALL, type Step } from "./step.ts";
import { supports } from "./supports.ts";

/** The spreadsheet takes a list of choices as one text of at most this length, and messages no longer. */
const LONGEST_TEXT = 255;

/** What cells accept. A list that the spreadsheet cannot hold keeps its message and says so in `notes`. */
export function writeValidations(sheet: SheetPlan, notes: Set<string>): Step[] {
  return sheet.validations.map((validation) => {
    const rule = ruleOf(validation);
    if (!rule)
      notes.add("A list of choices was too long for the spreadsheet to check; its cells take any entry.");
    return check(sheet.name, validation.area, rule, validation.message);
  });
}

/** Tick boxes, or a list of TRUE and FALSE where the spreadsheet or the loaded library has none. */
export function writeTicks(sheet: SheetPlan, notes: Set<string>): Step[] {
  if (sheet.ticks.length === 0) return [];
  const boxes = supports("1.18") && "control" in Excel.Range.prototype;
  if (!boxes)
    notes.add("This spreadsheet has no tick boxes; choose TRUE or FALSE from the list in the cell.");
  return sheet.ticks.map((area) =>
    boxes
      ? {
          bytes: CALL,
          queue: (desk) => {
            desk.range(sheet.name, area).control = { type: "Checkbox" } as Excel.CheckboxCellControl;
          },
        }
      : check(sheet.name, area, list("TRUE,FALSE"), "TRUE counts, FALSE does not."),
  );
}

function ruleOf(validation: ValidationPlan): Excel.DataValidationRule | undefined {
  if (validation.kind === "number") {
    return { decimal: { formula1: validation.least, formula2: validation.most, operator: "Between" } };
  }
  const source = validation.choices.join(",");
  const holds = source.length <= LONGEST_TEXT && validation.choices.every((choice) => !choice.includes(","));
  return holds ? list(source) : undefined;
}

const list = (source: string): Excel.DataValidationRule => ({ list: { inCellDropDown: true, source } });

function check(sheet: string, area: Area, rule: Excel.DataValidationRule | undefined, text: string): Step {
  const message = text.slice(0, LONGEST_TEXT);
  return {
    bytes: 4 * CALL,
    queue: (desk) => {
      const { dataValidation } = desk.range(sheet, area);
      if (rule) {
        dataValidation.rule = rule;
        dataValidation.errorAlert = { title: "Not possible here", message, showAlert: true, style: "Stop" };
      }
      dataValidation.prompt = { title: "What goes here", message, showPrompt: true };
    },
  };
}

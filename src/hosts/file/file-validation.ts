import type { DataValidation } from "hucre";
import { areaName } from "../../sheets/a1.ts";
import type { Area, ValidationPlan } from "../../sheets/plan.ts";
import { fileText } from "./file-text.ts";

/** The longest list, in characters, that a spreadsheet takes in the rule itself; from memory. */
const LONGEST_LIST = 255;

/** Whether a file can hold the choices of a list: they stand between commas, and not for long. */
export function fitsInFile(plan: ValidationPlan): boolean {
  if (plan.kind !== "list") return true;
  const commas = plan.choices.some((choice) => choice.includes(","));
  return !commas && plan.choices.length > 0 && plan.choices.join(",").length <= LONGEST_LIST;
}

/** Cells of TRUE and FALSE, picked from a list of the two. */
export function fileTicks(area: Area): DataValidation {
  return { ...common(area, "TRUE or FALSE."), type: "list", formula1: '"TRUE,FALSE"' };
}

/** A rule for what may be typed, as a file has it. Ask `fitsInFile` first. */
export function fileValidation(plan: ValidationPlan): DataValidation {
  const rule = common(plan.area, plan.message);
  return plan.kind === "list"
    ? { ...rule, type: "list", formula1: `"${fileText(plan.choices.join(",").replaceAll('"', '""'))}"` }
    : { ...rule, type: "decimal", operator: "between", formula1: `${plan.least}`, formula2: `${plan.most}` };
}

function common(area: Area, message: string): Omit<DataValidation, "type"> {
  return {
    range: areaName(area),
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: "stop",
    errorMessage: fileText(message),
  };
}

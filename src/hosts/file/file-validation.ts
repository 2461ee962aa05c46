import type { DataValidation } from "hucre";
import { areaName } from "../../sheets/a1.ts";
import type { Area, ValidationPlan } from "../../sheets/plan.ts";
import { fileText } from "./file-text.ts";

/** The longest list that a file can hold in the rule itself, by the spreadsheet's own limit. */
export const LONGEST_LIST = 255;

/** Cells of TRUE and FALSE, picked from a list of the two. */
export function fileTicks(area: Area): DataValidation {
  return { ...common(area, "TRUE or FALSE."), type: "list", formula1: '"TRUE,FALSE"' };
}

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

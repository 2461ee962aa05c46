import { ColorKit, DataValidationType } from "@univerjs/core";
import type {
  Area,
  ConditionPlan,
  ConditionStyleName,
  SheetPlan,
  ValidationPlan,
} from "../../sheets/plan.ts";
import { CONDITION_STYLES } from "../../sheets/styles.ts";
import type { Sheet } from "./grid.ts";
import { areaOf, type GridRange } from "./grid-range.ts";

/** Tick boxes, validations and conditions of a sheet. Kinds that a plan has no word for are left out. */
export function planOfRules(sheet: Sheet): Pick<SheetPlan, "ticks" | "validations" | "conditions"> {
  const rules = sheet.getDataValidations().map(({ rule }) => rule);
  return {
    ticks: rules.flatMap(({ type, ranges }) =>
      type === DataValidationType.CHECKBOX ? ranges.map((range: GridRange) => areaOf(range)) : [],
    ),
    validations: rules.flatMap((rule) =>
      rule.ranges.flatMap((range: GridRange) => validation(rule, areaOf(range))),
    ),
    conditions: sheet
      .getConditionalFormattingRules()
      .flatMap(({ ranges, rule }) =>
        ranges.flatMap((range: GridRange) => condition(rule as never, areaOf(range))),
      ),
  };
}

type Rule = ReturnType<Sheet["getDataValidations"]>[number]["rule"];

function validation(rule: Rule, area: Area): ValidationPlan[] {
  const message = rule.error ?? "";
  if (rule.type === DataValidationType.LIST) {
    return [{ area, kind: "list", choices: choicesOf(rule.formula1 ?? ""), message }];
  }
  if (rule.type !== DataValidationType.DECIMAL || rule.operator !== "between") return [];
  return [{ area, kind: "number", least: Number(rule.formula1), most: Number(rule.formula2), message }];
}

/** The grid keeps choices as JSON, and as text with commas where a user typed them. */
function choicesOf(list: string): string[] {
  return list.startsWith("[") ? JSON.parse(list) : list.split(",");
}

interface HighlightRule {
  readonly subType?: string;
  readonly value?: unknown;
  readonly style?: { cl?: { rgb?: string }; bg?: { rgb?: string }; bl?: number; st?: { s?: number } };
}

function condition({ subType, value, style }: HighlightRule, area: Area): ConditionPlan[] {
  if (subType !== "formula" || typeof value !== "string") return [];
  const names = Object.keys(CONDITION_STYLES) as ConditionStyleName[];
  const name = names.find((one) => {
    const look = CONDITION_STYLES[one];
    return (
      sameColor(style?.cl?.rgb, look.color) &&
      sameColor(style?.bg?.rgb, look.fill) &&
      Boolean(style?.bl) === (look.bold ?? false) &&
      Boolean(style?.st?.s) === (look.strike ?? false)
    );
  });
  return name ? [{ area, formula: value.replace(/^=/, ""), style: name }] : [];
}

/** The grid writes colours as `rgb(1,2,3)`. */
function sameColor(one: string | undefined, other: string | undefined): boolean {
  if (!one || !other) return one === other;
  return new ColorKit(one).toHexString() === new ColorKit(other).toHexString();
}

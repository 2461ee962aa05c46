import type { Area } from "../../src/sheets/plan.ts";
import { overlap } from "./addresses.ts";
import { collection } from "./collection.ts";
import { CUSTOM_CONDITION } from "./range-shapes.ts";
import { invalidArgument } from "./service-error.ts";
import { bagStore, shaped } from "./shapes.ts";
import type { WireObject } from "./wire-object.ts";
import type { HeldCondition, HeldSheet, HeldWorkbook } from "./workbook.ts";

/** `Excel.ConditionalFormatCollection` of an area. */
export function conditions(workbook: HeldWorkbook, sheet: HeldSheet, area: Area): WireObject {
  const here = () => sheet.conditions.filter((held) => overlap(held.area, area));
  return collection(
    "ConditionalFormatCollection",
    () => here().map(condition),
    (key) =>
      here()
        .filter(({ id }) => id === key)
        .map(condition)[0],
    {
      Add: (kind: string) => {
        if (kind !== "Custom") throw invalidArgument(kind);
        const held: HeldCondition = { id: `{cf${++workbook.last}}`, area, bag: {} };
        sheet.conditions.push(held);
        return condition(held);
      },
    },
  );
}

function condition(held: HeldCondition): WireObject {
  return {
    type: "ConditionalFormat",
    id: held.id,
    children: { Custom: () => shaped("CustomConditionalFormat", CUSTOM_CONDITION, bagStore(held.bag)) },
  };
}

import type { WorkbookPlan } from "../../sheets/plan.ts";
import { RUN_OPTIONS } from "./run-excel.ts";
import { readStanding, type Standing } from "./standing.ts";

/**
 * Takes away again what a write that failed has left: sheets and names of the plan that did not stand before. A
 * batch of its own, because the failed one still holds calls that were never sent. False if that failed as well.
 */
export async function takeAway(plan: WorkbookPlan, before: Standing): Promise<boolean> {
  try {
    await Excel.run(RUN_OPTIONS, async (context) => {
      const now = await readStanding(context);
      const known = new Set(before.sheets.map(({ id }) => id));
      const planned = new Set(plan.sheets.map(({ name }) => name.toLowerCase()));
      const names = new Set(plan.names.map(({ name }) => name.toLowerCase()));
      for (const name of before.names) names.delete(name.toLowerCase());
      for (const name of now.names) {
        if (names.has(name.toLowerCase())) context.workbook.names.getItem(name).delete();
      }
      for (const { id, name } of now.sheets) {
        if (!known.has(id) && planned.has(name.toLowerCase()))
          context.workbook.worksheets.getItem(id).delete();
      }
      await context.sync();
    });
    return true;
  } catch {
    return false;
  }
}

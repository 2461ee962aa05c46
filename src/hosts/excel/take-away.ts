import type { WorkbookPlan } from "../../sheets/plan.ts";
import { RUN_OPTIONS } from "./run-excel.ts";
import { readStanding, type Standing } from "./standing.ts";

/**
 * Takes away again what a write that failed has left: sheets and names of the plan that did not stand before. A
 * batch of its own, because the failed one still holds calls that were never sent. False if that failed as well.
 */
export async function takeAway(
  plan: WorkbookPlan,
  marks: readonly string[],
  before: Standing,
): Promise<boolean> {
  try {
    await Excel.run(RUN_OPTIONS, async (context) => {
      const now = await readStanding(context);
      const { names, worksheets } = context.workbook;
      for (const name of ourNames(plan, before, now)) names.getItem(name).delete();
      const ours = ourSheets(plan, marks, before, now);
      // One of ours that is in front gives way to the user's own, not to whichever comes next.
      if (ours.includes(now.active) && now.sheets.some(({ id }) => id === before.active))
        worksheets.getItem(before.active).activate();
      for (const id of ours) worksheets.getItem(id).delete();
      await context.sync();
    });
    return true;
  } catch {
    return false;
  }
}

/** Sheets are added and named one by one: where one still has its mark, only those before it have their names. */
function ourSheets(plan: WorkbookPlan, marks: readonly string[], before: Standing, now: Standing): string[] {
  const standing = now.sheets.map(({ name }) => name);
  const marked = marks.findIndex((mark) => standing.includes(mark));
  const named = plan.sheets.slice(0, marked < 0 ? undefined : marked).map(({ name }) => name.toLowerCase());
  const ours = new Set([...named, ...marks.map((mark) => mark.toLowerCase())]);
  const theirs = new Set(before.sheets.map(({ id }) => id));
  return now.sheets
    .filter(({ id, name }) => !theirs.has(id) && ours.has(name.toLowerCase()))
    .map(({ id }) => id);
}

function ourNames(plan: WorkbookPlan, before: Standing, now: Standing): string[] {
  const ours = new Set(plan.names.map(({ name }) => name.toLowerCase()));
  const theirs = new Set(before.names.map((name) => name.toLowerCase()));
  return now.names.filter((name) => ours.has(name.toLowerCase()) && !theirs.has(name.toLowerCase()));
}

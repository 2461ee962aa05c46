import { isProblem, type Outcome, unavailable } from "../../outcome/problem.ts";
import type { StopFollowing, Told } from "../host.ts";
import { oneAtATime } from "./one-at-a-time.ts";
import { sheetText, tableText } from "./read-tables.ts";
import { runExcel } from "./run-excel.ts";

/**
 * Follows a table, or the sheet in front, by the event that its sheet raises with every change. The sheet is listened
 * to and not the table, for a row typed right below a table belongs to it only afterwards. Both are found again by
 * their identifiers, so that they may be renamed and another sheet may come to the front. It ends with the pane: one
 * that is closed has nobody to tell.
 */
export function followTable(name: string | undefined, told: Told): Promise<Outcome<StopFollowing>> {
  return runExcel<StopFollowing>(async (context) => {
    const { tables, worksheets } = context.workbook;
    const table = name === undefined ? null : tables.getItemOrNullObject(name);
    const sheet = table ? table.worksheet : worksheets.getActiveWorksheet();
    table?.load("id");
    sheet.load("id");
    await context.sync();
    if (table?.isNullObject) return unavailable(`There is no table "${name}" any more; choose another.`);
    const [tableId, sheetId] = [table?.id, sheet.id];
    const read = () =>
      runExcel((again) =>
        tableId === undefined
          ? sheetText(again, again.workbook.worksheets.getItemOrNullObject(sheetId))
          : tableText(again, again.workbook.tables.getItemOrNullObject(tableId), name!),
      );
    let following = true;
    let heard: OfficeExtension.EventHandlerResult<Excel.WorksheetChangedEventArgs> | undefined;
    let unwatch: (() => Promise<void>) | undefined;
    const stop = async () => {
      if (!following) return;
      following = false;
      await unwatch?.();
      // Only the context that it was added in takes it away. Should that fail, nothing hears it any more.
      await Excel.run(heard!.context, async (same) => {
        heard!.remove();
        await same.sync();
      }).catch(() => {});
    };
    const hear = oneAtATime(async () => {
      const text = following ? await read() : null;
      if (text === null || !following) return;
      if (isProblem(text)) await stop();
      told(text);
    });
    heard = sheet.onChanged.add(hear);
    await context.sync();
    unwatch = await Office.addin.onVisibilityModeChanged?.(async ({ visibilityMode }) => {
      if (visibilityMode !== "Hidden" || !following) return;
      told(unavailable("The pane was closed, so the table is not followed any more."));
      await stop();
    });
    // What was entered between the reading that the caller knows and now, no event tells of.
    void hear();
    return stop;
  });
}

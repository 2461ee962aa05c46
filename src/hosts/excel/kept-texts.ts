import type { Outcome } from "../../outcome/problem.ts";
import { runExcel } from "./run-excel.ts";

/** Text kept in the workbook's settings under a key, or null where there is none. */
export function recallText(key: string): Promise<Outcome<string | null>> {
  return runExcel<string | null>(async (context) => {
    const setting = context.workbook.settings.getItemOrNullObject(key);
    setting.load("value");
    await context.sync();
    return setting.isNullObject ? null : String(setting.value);
  });
}

/** Keeps a text in the workbook's settings, where it travels with the file; null forgets it. */
export function keepText(key: string, text: string | null): Promise<Outcome<true>> {
  return runExcel<true>(async (context) => {
    const { settings } = context.workbook;
    if (text === null) settings.getItemOrNullObject(key).delete();
    else settings.add(key, text);
    await context.sync();
    return true;
  });
}

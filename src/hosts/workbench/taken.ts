import type { Taken } from "../../sheets/free-names.ts";
import type { Workbook } from "./grid.ts";

/** Names already in use in the grid's workbook. */
export function takenIn(workbook: Workbook): Taken {
  return {
    sheets: workbook.getSheets().map((sheet) => sheet.getSheetName()),
    names: [
      ...workbook.getDefinedNames().map((name) => name.getName()),
      ...workbook.getTableList().map(({ name }) => name),
    ],
  };
}

import { writeXlsx as writeFile } from "hucre/xlsx";
import { invalid, type Outcome } from "../../outcome/problem.ts";
import { sheetAreaName } from "../../sheets/a1.ts";
import type { WorkbookPlan } from "../../sheets/plan.ts";
import { printNames } from "./file-print.ts";
import { fileSheet } from "./file-sheet.ts";
import { FILE_FONT } from "./file-style.ts";
import { finishParts } from "./finish-parts.ts";
import { unwritable } from "./unwritable.ts";

/**
 * A plan as the bytes of an .xlsx file. Formulas carry the answers of the plan, for readers that do not calculate,
 * and are calculated afresh by a spreadsheet that opens it. Answers a problem for what no such file can hold: a cell
 * with too much text, a table without headings, a list that is too long. Tells the share of long tables that is packed.
 */
export async function writeXlsx(
  plan: WorkbookPlan,
  told: (share: number) => void = () => {},
): Promise<Outcome<Uint8Array>> {
  const problem = unwritable(plan);
  if (problem) return problem;
  try {
    const sheets = plan.sheets.map(fileSheet);
    const bytes = await writeFile({
      sheets: sheets.map(({ sheet }) => sheet),
      namedRanges: [
        ...plan.names.map(({ name, at }) => ({ name, range: sheetAreaName(at) })),
        ...plan.sheets.flatMap(printNames),
      ],
      defaultFont: FILE_FONT,
      activeSheet: plan.sheets.findIndex(({ name }) => name === plan.active),
    });
    return finishParts(
      bytes,
      plan,
      sheets.map(({ runs }) => runs),
      told,
    );
  } catch (error) {
    return invalid(
      `The file could not be written: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}

import type { NamedRange, WriteSheet } from "hucre";
import { sheetAreaName, sheetName } from "../../sheets/a1.ts";
import type { PrintPlan, SheetPlan } from "../../sheets/plan.ts";

/**
 * Page setup, with the footer in the middle, where `&` begins a code and is doubled to be itself. Areas and titles
 * are left to `printNames`: the library would write them without quoting the sheet's name.
 */
export function filePrint(print: PrintPlan): Pick<WriteSheet, "pageSetup" | "headerFooter"> {
  return {
    pageSetup: {
      orientation: print.landscape ? "landscape" : "portrait",
      fitToPage: true,
      fitToWidth: print.pagesWide,
      fitToHeight: print.pagesTall,
    },
    ...(print.footer === undefined
      ? {}
      : { headerFooter: { oddFooter: `&C${print.footer.replaceAll("&", "&&")}` } }),
  };
}

/** What a sheet prints and which rows it repeats, as the names that a file keeps them under. */
export function printNames({ name, print }: SheetPlan): NamedRange[] {
  const names: NamedRange[] = [];
  if (print?.area) {
    const range = sheetAreaName({ sheet: name, area: print.area });
    names.push({ name: "_xlnm.Print_Area", range, scope: name });
  }
  if (print?.titleRows) {
    const { row, rows } = print.titleRows;
    const range = `${sheetName(name)}!$${row + 1}:$${row + rows}`;
    names.push({ name: "_xlnm.Print_Titles", range, scope: name });
  }
  return names;
}

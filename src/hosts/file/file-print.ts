import type { NamedRange, WriteSheet } from "hucre";
import { sheetAreaName, sheetName } from "../../sheets/a1.ts";
import type { PrintPlan, SheetPlan } from "../../sheets/plan.ts";

/** Page setup but for areas and titles, which the library would write without quoting the sheet's name. */
export function filePrint(print: PrintPlan): Pick<WriteSheet, "pageSetup" | "headerFooter"> {
  return {
    pageSetup: {
      orientation: print.landscape ? "landscape" : "portrait",
      fitToPage: true,
      fitToWidth: print.pagesWide,
      fitToHeight: print.pagesTall,
    },
    ...(print.footer === undefined ? {} : { headerFooter: { oddFooter: `&C${fileFooter(print.footer)}` } }),
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

/** `&` begins a code in a footer, and digits after a code would be taken for a font's size. */
function fileFooter(text: string): string {
  const escaped = text.replaceAll("&", "&&");
  return /^\d/.test(escaped) ? ` ${escaped}` : escaped;
}

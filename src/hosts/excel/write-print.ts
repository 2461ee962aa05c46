import { areaName } from "../../sheets/a1.ts";
import type { SheetPlan } from "../../sheets/plan.ts";
import { CALL, type Step } from "./step.ts";

/** How the sheet goes on paper. */
export function writePrint({ name, print }: SheetPlan): Step[] {
  if (!print) return [];
  return [
    {
      bytes: 5 * CALL,
      queue: (desk) => {
        const { pageLayout } = desk.sheet(name);
        pageLayout.orientation = print.landscape ? "Landscape" : "Portrait";
        if (print.area) pageLayout.setPrintArea(areaName(print.area));
        if (print.titleRows) {
          const { row, rows } = print.titleRows;
          pageLayout.setPrintTitleRows(`${row + 1}:${row + rows}`);
        }
        const fit = {
          ...(print.pagesWide > 0 && { horizontalFitToPages: print.pagesWide }),
          ...(print.pagesTall > 0 && { verticalFitToPages: print.pagesTall }),
        };
        if (Object.keys(fit).length > 0) pageLayout.zoom = fit;
        if (print.footer) {
          // A single & begins a code in footers.
          pageLayout.headersFooters.defaultForAllPages.centerFooter = print.footer.replaceAll("&", "&&");
        }
      },
    },
  ];
}

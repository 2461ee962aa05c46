import { excelHost } from "../hosts/excel/excel-host.ts";
import { mountPane } from "./mount.tsx";

/** The pane inside the spreadsheet: the one file here that knows which host it stands in. */
Office.onReady(() => {
  const element = document.getElementById("pane")!;
  element.textContent = "";
  if (Office.context.officeTheme) {
    element.dataset.theme = isDark(Office.context.officeTheme.bodyBackgroundColor) ? "dark" : "light";
  }
  mountPane(element, excelHost());
});

/** Whether a `#rrggbb` colour is nearer to black than to white. */
function isDark(color: string): boolean {
  const parts = color.match(/[0-9a-f]{2}/gi)?.map((part) => Number.parseInt(part, 16)) ?? [255];
  return parts.reduce((sum, part) => sum + part, 0) / parts.length < 128;
}

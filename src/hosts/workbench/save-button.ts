import { isProblem } from "../../outcome/problem.ts";
import type { WorkbookPlan } from "../../sheets/plan.ts";
import { writeXlsx } from "../file/write-xlsx.ts";
import { download } from "./download.ts";

const MIME = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** The button that hands the workbook over as a file. What cannot be saved is said in its place. */
export function saveButton(button: HTMLButtonElement, read: () => WorkbookPlan): void {
  const label = button.textContent;
  button.disabled = false;
  button.addEventListener("click", async () => {
    button.disabled = true;
    const bytes = await writeXlsx(read());
    button.disabled = false;
    button.textContent = isProblem(bytes) ? `Not saved: ${bytes.message}` : label;
    if (!isProblem(bytes)) download(bytes, "bay-and-bench.xlsx", MIME);
  });
}

import { isProblem } from "../../outcome/problem.ts";
import type { WorkbookPlan } from "../../sheets/plan.ts";
import { writeXlsx } from "../file/write-xlsx.ts";

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
    if (!isProblem(bytes)) download(bytes, "bay-and-bench.xlsx");
  });
}

function download(bytes: Uint8Array, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes.slice()], { type: MIME }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

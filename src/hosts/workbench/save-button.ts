import { isProblem, type Outcome, unavailable } from "../../outcome/problem.ts";
import type { WorkbookPlan } from "../../sheets/plan.ts";
import { writeXlsx } from "../file/write-xlsx.ts";
import { download } from "./download.ts";

const MIME = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const NAME = "bay-and-bench.xlsx";

/** The button that hands the workbook over as a file. How that goes is said in a line of its own beside it. */
export function saveButton(button: HTMLButtonElement, line: HTMLElement, read: () => WorkbookPlan): void {
  let saving = false;
  button.disabled = false;
  button.addEventListener("click", async () => {
    if (saving) return;
    saving = true;
    // Not disabled: a button that is disabled under the finger drops the keyboard's place.
    button.setAttribute("aria-disabled", "true");
    line.textContent = "Saving…";
    // A long workbook takes seconds in which the page draws nothing, so it draws that line first.
    await new Promise((resolve) => setTimeout(resolve, 50));
    const bytes = await written(read);
    line.textContent = isProblem(bytes) ? `Not saved: ${bytes.message}` : `Saved ${NAME}.`;
    if (!isProblem(bytes)) download(bytes, NAME, MIME);
    button.removeAttribute("aria-disabled");
    saving = false;
  });
}

async function written(read: () => WorkbookPlan): Promise<Outcome<Uint8Array>> {
  try {
    return await writeXlsx(read());
  } catch (error) {
    // The grid may be in a state that cannot be read; the button must come back all the same.
    return unavailable(error instanceof Error ? error.message : String(error));
  }
}

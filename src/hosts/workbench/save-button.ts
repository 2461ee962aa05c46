import { isProblem, type Outcome, unavailable } from "../../outcome/problem.ts";
import type { WorkbookPlan } from "../../sheets/plan.ts";
import { writeXlsx } from "../file/write-xlsx.ts";

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
    if (!isProblem(bytes)) download(bytes, NAME);
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

function download(bytes: Uint8Array, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes.slice()], { type: MIME }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

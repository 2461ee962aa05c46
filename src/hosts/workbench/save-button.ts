import { isProblem, type Outcome, unavailable } from "../../outcome/problem.ts";
import type { WorkbookPlan } from "../../sheets/plan.ts";
import { download } from "./download.ts";
import type { Grid } from "./grid.ts";
import { readUnchanged } from "./read-unchanged.ts";
import { xlsxBeside } from "./xlsx-beside.ts";

const MIME = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
const NAME = "bay-and-bench.xlsx";

/** What is saved by then needs no button to stop it, milliseconds. */
const LONG = 500;
/** Reading the workbook is so much of saving it, writing the file the rest. */
const READ = 0.3;

/** The button that hands the workbook over as a file, the line that says how that goes, the button that stops it. */
interface SaveParts {
  readonly save: HTMLButtonElement;
  readonly line: HTMLElement;
  readonly stop: HTMLButtonElement;
}

/** Starts the button. The workbook is read in slices and written beside the page, so that people can go on working. */
export function saveButton(
  { save, line, stop }: SaveParts,
  grid: Grid,
  read: () => Generator<number, WorkbookPlan>,
): void {
  let saving: AbortController | null = null;
  save.disabled = false;
  stop.addEventListener("click", () => saving?.abort());
  save.addEventListener("click", async () => {
    if (saving) return;
    saving = new AbortController();
    // Not disabled: a button that is disabled under the finger drops the keyboard's place.
    save.setAttribute("aria-disabled", "true");
    const say = (share: number) => {
      // By quarters, so that those who hear it are not told of every step.
      const quarters = Math.floor(share * 4) * 25;
      const words = quarters > 0 && quarters < 100 ? `Saving… ${quarters} %` : "Saving…";
      if (line.textContent !== words) line.textContent = words;
    };
    line.textContent = "Saving…";
    const waited = setTimeout(() => {
      stop.hidden = false;
    }, LONG);
    const bytes = await saved(grid, read, say, saving.signal);
    clearTimeout(waited);
    if (document.activeElement === stop) save.focus();
    stop.hidden = true;
    line.textContent = wordsOf(bytes);
    if (bytes && !isProblem(bytes)) download(bytes, NAME, MIME);
    save.removeAttribute("aria-disabled");
    saving = null;
  });
}

function wordsOf(bytes: Outcome<Uint8Array> | null): string {
  if (bytes === null) return "Stopped; nothing was saved.";
  return isProblem(bytes) ? `Not saved: ${bytes.message}` : `Saved ${NAME}.`;
}

async function saved(
  grid: Grid,
  read: () => Generator<number, WorkbookPlan>,
  told: (share: number) => void,
  stop: AbortSignal,
): Promise<Outcome<Uint8Array> | null> {
  try {
    const plan = await readUnchanged(grid, read, (share) => told(READ * share), stop);
    return plan && (await xlsxBeside(plan, (share) => told(READ + (1 - READ) * share), stop));
  } catch (error) {
    // The grid may be in a state that cannot be read; the button must come back all the same.
    return unavailable(error instanceof Error ? error.message : String(error));
  }
}

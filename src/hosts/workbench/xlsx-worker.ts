import { type Outcome, unavailable } from "../../outcome/problem.ts";
import type { Block, SheetPlan, WorkbookPlan } from "../../sheets/plan.ts";
import { writeXlsx } from "../file/write-xlsx.ts";

/** A plan as it comes here, piece by piece: each sheet without its cells, then these block by block, at last the rest. */
export type PlanPiece =
  | { readonly sheet: Omit<SheetPlan, "blocks"> }
  | { readonly block: Block }
  | { readonly rest: Omit<WorkbookPlan, "sheets"> };

/** What is heard from here: the share written, at last the file. */
export type FileWords = { readonly share: number } | { readonly file: Outcome<Uint8Array> };

/** The worker's script: writes one workbook as .xlsx beside the page, which ends it when it is done or stopped. */
const sheets: (Omit<SheetPlan, "blocks"> & { readonly blocks: Block[] })[] = [];
addEventListener("message", ({ data }: MessageEvent<PlanPiece>) => {
  if ("sheet" in data) sheets.push({ ...data.sheet, blocks: [] });
  else if ("block" in data) sheets.at(-1)!.blocks.push(data.block);
  else void write({ ...data.rest, sheets });
});

async function write(plan: WorkbookPlan): Promise<void> {
  try {
    say({ file: await writeXlsx(plan, (share) => say({ share })) });
  } catch (error) {
    // Memory may run out.
    say({ file: unavailable(error instanceof Error ? error.message : String(error)) });
  }
}

function say(words: FileWords): void {
  const bytes = "file" in words && words.file instanceof Uint8Array ? [words.file.buffer] : [];
  postMessage(words, { transfer: bytes });
}

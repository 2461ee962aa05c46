import { type Outcome, unavailable } from "../../outcome/problem.ts";
import type { WorkbookPlan } from "../../sheets/plan.ts";
import { inSlices } from "../../slices/in-slices.ts";
import type { FileWords, PlanPiece } from "./xlsx-worker.ts";

/** Handing the plan over is so much of the work, writing it the rest. */
const HANDED_OVER = 0.2;

/** Writes a plan as .xlsx in a worker, telling the share done. Answers null once it was stopped. */
export async function xlsxBeside(
  plan: WorkbookPlan,
  told: (share: number) => void,
  stop: AbortSignal,
): Promise<Outcome<Uint8Array> | null> {
  const worker = new Worker(new URL("./xlsx-worker.ts", import.meta.url), { name: "xlsx-worker" });
  try {
    return await new Promise((resolve, reject) => {
      stop.addEventListener("abort", () => resolve(null));
      worker.onmessage = ({ data }: MessageEvent<FileWords>) => {
        if ("file" in data) resolve(data.file);
        else told(HANDED_OVER + (1 - HANDED_OVER) * data.share);
      };
      worker.onerror = () =>
        resolve(
          unavailable("It could not be written beside the page; it may be more than there is memory for."),
        );
      inSlices(handOver(worker, plan), (share) => told(HANDED_OVER * share), stop).catch(reject);
    });
  } finally {
    worker.terminate();
  }
}

/** Piece by piece, for each is copied on its way. */
function* handOver(worker: Worker, { sheets, ...rest }: WorkbookPlan): Generator<number, void> {
  const post = (piece: PlanPiece) => worker.postMessage(piece);
  const all = sheets.reduce((sum, { blocks }) => sum + blocks.length, 0);
  let posted = 0;
  for (const { blocks, ...sheet } of sheets) {
    post({ sheet });
    for (const block of blocks) {
      post({ block });
      yield ++posted / all;
    }
  }
  post({ rest });
}

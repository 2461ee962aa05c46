import type { Run } from "../host.ts";
import { packSteps } from "./pack-steps.ts";
import { deskOf, type Step } from "./step.ts";
import { Stopped } from "./stopped.ts";

/** Sends steps in as few requests as hold them, and tells how far it is; throws `Stopped` where it is told to stop. */
export async function sendSteps(
  context: Excel.RequestContext,
  steps: readonly Step[],
  run: Run = {},
): Promise<void> {
  const total = steps.reduce((sum, { bytes }) => sum + bytes, 0);
  let done = 0;
  for (const request of packSteps(steps)) {
    if (run.signal?.aborted) throw new Stopped();
    context.application.suspendApiCalculationUntilNextSync();
    context.application.suspendScreenUpdatingUntilNextSync();
    const desk = deskOf(context.workbook);
    for (const step of request) {
      step.queue(desk);
      done += step.bytes;
    }
    await context.sync();
    run.progress?.(done / total);
  }
}

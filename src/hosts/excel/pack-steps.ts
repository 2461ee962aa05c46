import type { Step } from "./step.ts";

/** Where requests are split. On the web one may have 5 MB; the rest is room for what the steps' own counting misses. */
export const MOST_BYTES = 4_600_000;

/** Steps in their order, as many to a request as fit. */
export function packSteps(steps: readonly Step[], most = MOST_BYTES): Step[][] {
  const requests: Step[][] = [];
  let room = 0;
  for (const step of steps) {
    if (requests.length === 0 || step.bytes > room) {
      requests.push([]);
      room = most;
    }
    requests.at(-1)!.push(step);
    room -= step.bytes;
  }
  return requests;
}

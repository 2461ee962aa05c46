import { type Outcome, unavailable } from "../outcome/problem.ts";

/** Said of what was stopped before anything was written. */
export const STOPPED = unavailable("Stopped; nothing was written.");

/** What a host reads, or a problem at once when it is stopped: a reading that nobody waits for leaves nothing behind. */
export function unlessStopped<T>(
  reading: Promise<Outcome<T>>,
  stop: AbortSignal | undefined,
): Promise<Outcome<T>> {
  if (!stop) return reading;
  return new Promise((resolve, reject) => {
    if (stop.aborted) resolve(STOPPED);
    stop.addEventListener("abort", () => resolve(STOPPED), { once: true });
    reading.then(resolve, reject);
  });
}

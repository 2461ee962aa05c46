import type { Host } from "../hosts/host.ts";
import { isProblem, type Problem, unavailable } from "../outcome/problem.ts";
import type { Kept } from "./draft.ts";
import { keepAll } from "./keeping.ts";

/** How long the pane waits for the next change before it keeps what there is, milliseconds. */
export const KEEPING_PAUSE = 400;

/** What keeps the sessions with the workbook. */
export interface Keeper {
  /** Says what the workbook holds already, so that it is not kept again. */
  readonly holds: (kept: Kept) => void;
  /** Says what is on the desk now: kept after a pause, unless the workbook holds it. */
  readonly changed: (kept: Kept) => void;
  /** Keeps at once what still waits, for the page may be about to go. */
  readonly flush: () => void;
}

/**
 * Keeps sessions once they have rested, and only after a change: a pane that was merely opened leaves the workbook as
 * it was.
 *
 * @param told hears after each keeping why it failed; null where it did not
 */
export function keeper(host: Host, told: (problem: Problem | null) => void): Keeper {
  let held: Kept | null = null;
  let waiting: Kept | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const flush = () => {
    clearTimeout(timer);
    if (waiting === null) return;
    held = waiting;
    waiting = null;
    keepAll(host, held).then(
      (kept) => told(isProblem(kept) ? kept : null),
      // A host answers problems; this is for one that breaks its promise.
      (error) => told(unavailable(error instanceof Error ? error.message : String(error))),
    );
  };
  return {
    holds(kept) {
      held = kept;
    },
    changed(kept) {
      clearTimeout(timer);
      waiting = kept === held ? null : kept;
      if (waiting) timer = setTimeout(flush, KEEPING_PAUSE);
    },
    flush,
  };
}

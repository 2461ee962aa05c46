import { inSlices } from "../../slices/in-slices.ts";
import type { Grid } from "./grid.ts";

/** So the grid calls what changes a workbook, rather than what is selected or in view. */
const CHANGE = /\.mutation\./;

/**
 * Reads a workbook in slices, between which people go on working: where it was changed meanwhile the reading begins
 * again, for half of it would be of another workbook. Answers null once it was stopped.
 */
export async function readUnchanged<Found>(
  grid: Grid,
  read: () => Generator<number, Found>,
  told: (share: number) => void,
  stop: AbortSignal,
): Promise<Found | null> {
  for (;;) {
    let changed = false;
    const heard = grid.addEvent(grid.Event.CommandExecuted, ({ id }) => {
      changed ||= CHANGE.test(id);
    });
    try {
      const found = await inSlices(read(), told, stop);
      if (found === null || !changed) return found;
    } catch (error) {
      // A sheet that was just being read may be gone.
      if (!changed) throw error;
    } finally {
      heard.dispose();
    }
  }
}

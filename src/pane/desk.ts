import { applyChange } from "./apply-change.ts";
import type { Change } from "./change.ts";
import type { Kept } from "./draft.ts";

/** What is kept, and the steps back. */
export interface Desk {
  readonly kept: Kept;
  /** The latest last. */
  readonly past: readonly Step[];
}

interface Step {
  readonly kept: Kept;
  /** Changes with the same mark that follow each other are undone together: letters typed into one box. Empty: none. */
  readonly mark: string;
}

export type DeskAction =
  | Change
  | { readonly does: "undo" }
  | { readonly does: "restored"; readonly kept: Kept };

const STEPS_BACK = 50;

/** The one function that moves the pane from one state to the next. Pure. */
export function reduceDesk(desk: Desk, action: DeskAction): Desk {
  if (action.does === "restored") return { kept: action.kept, past: [] };
  if (action.does === "undo") {
    const step = desk.past.at(-1);
    if (!step) return desk;
    // What is typed from here on is a step of its own, though an earlier one was typed into the same box.
    const past = desk.past.slice(0, -1);
    return {
      kept: step.kept,
      past: past.map((one, i) => (i === past.length - 1 ? { ...one, mark: "" } : one)),
    };
  }
  if (action.does === "inLedger") {
    // What stands in the ledger stands there whichever step is gone back to.
    const past = desk.past.map((step) => ({ ...step, kept: applyChange(step.kept, action) }));
    return { kept: applyChange(desk.kept, action), past };
  }
  const kept = applyChange(desk.kept, action);
  if (kept === desk.kept) return desk;
  if (action.does === "recalled") return { kept, past: desk.past };
  const mark = markOf(action);
  if (mark !== "" && desk.past.at(-1)?.mark === mark) return { kept, past: desk.past };
  return { kept, past: [...desk.past, { kept: desk.kept, mark }].slice(-STEPS_BACK) };
}

function markOf(change: Change): string {
  switch (change.does) {
    case "text":
      // Rows that came in from a table are a step each: undone together, all of a session's would go.
      return change.typed ? "text" : "";
    case "bench":
    case "plan":
      return change.typed ? change.does : "";
    default:
      return "";
  }
}

import type { DeskAction } from "./desk.ts";
import { emptyDraft, type Kept } from "./draft.ts";
import { today } from "./today.ts";

interface PaneHeadProps {
  readonly kept: Kept;
  readonly canUndo: boolean;
  readonly dispatch: (action: DeskAction) => void;
}

/** The name of the thing, the units, and the ways back. */
export function PaneHead({ kept, canUndo, dispatch }: PaneHeadProps) {
  const { id: _, ...empty } = emptyDraft("", today());
  return (
    <header>
      <div class="buttons">
        <button type="button" id="undo" disabled={!canUndo} onClick={() => dispatch({ does: "undo" })}>
          Undo
        </button>
        <button type="button" id="start-over" onClick={() => dispatch({ does: "replace", draft: empty })}>
          Start over
        </button>
        <select
          aria-label="Units"
          id="units"
          value={kept.units}
          onChange={(event) =>
            dispatch({ does: "units", units: event.currentTarget.value === "metric" ? "metric" : "us" })
          }
        >
          <option value="us">yards, mph, inches</option>
          <option value="metric">metres, m/s, cm</option>
        </select>
      </div>
    </header>
  );
}

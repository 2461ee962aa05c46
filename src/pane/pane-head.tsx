import { UNIT_SETS, type UnitSet } from "../shots/unit-set.ts";
import type { DeskAction } from "./desk.ts";
import { emptyDraft, type Kept } from "./draft.ts";
import { freeId, sessionName } from "./session-name.ts";
import { today } from "./today.ts";

/** What each set of units shows lengths of shots, speeds and lengths of clubs in. */
const UNIT_WORDS: Readonly<Record<UnitSet, string>> = {
  us: "yards, mph, inches",
  metric: "metres, m/s, cm",
  "metric-kmh": "metres, km/h, cm",
};

interface PaneHeadProps {
  readonly kept: Kept;
  readonly canUndo: boolean;
  readonly dispatch: (action: DeskAction) => void;
}

/** Which session is on the desk, the units, and the ways back. */
export function PaneHead({ kept, canUndo, dispatch }: PaneHeadProps) {
  const startOver = () => {
    const { id: _, ...draft } = emptyDraft(kept.open, today());
    dispatch({ does: "replace", draft });
  };
  return (
    <div class="head">
      {kept.drafts.length > 1 && (
        <div class="row session">
          <select
            id="session"
            aria-label="Session"
            value={kept.open}
            onChange={(event) => dispatch({ does: "open", id: event.currentTarget.value })}
          >
            {kept.drafts.map((draft) => (
              <option key={draft.id} value={draft.id}>
                {sessionName(draft)}
              </option>
            ))}
          </select>
          <button type="button" id="forget" onClick={() => dispatch({ does: "forget", id: kept.open })}>
            Remove
          </button>
        </div>
      )}
      <div class="buttons">
        <button type="button" id="undo" disabled={!canUndo} onClick={() => dispatch({ does: "undo" })}>
          Undo
        </button>
        <button type="button" id="start-over" onClick={startOver}>
          Start over
        </button>
        <button
          type="button"
          id="new-session"
          onClick={() => dispatch({ does: "new", draft: emptyDraft(freeId(kept), today()) })}
        >
          New session
        </button>
        <select
          aria-label="Units"
          id="units"
          value={kept.units}
          onChange={(event) => dispatch({ does: "units", units: event.currentTarget.value as UnitSet })}
        >
          {UNIT_SETS.map((units) => (
            <option key={units} value={units}>
              {UNIT_WORDS[units]}
            </option>
          ))}
        </select>
      </div>
    </div>
  );
}

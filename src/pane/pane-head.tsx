import { useRef } from "preact/hooks";
import { UNIT_SETS, type UnitSet } from "../shots/unit-set.ts";
import type { DeskAction } from "./desk.ts";
import { emptyDraft, type Kept } from "./draft.ts";
import { freeId, sessionName } from "./session-name.ts";
import { today } from "./today.ts";
import { rememberUnits } from "./usual-units.ts";

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
  const anew = useRef<HTMLButtonElement>(null);
  const startOver = () => {
    const { id: _, ...draft } = emptyDraft(kept.open, today());
    dispatch({ does: "replace", draft });
  };
  const forget = () => {
    // With one session left this button goes, and the keyboard's place with it.
    if (kept.drafts.length === 2) anew.current?.focus();
    dispatch({ does: "forget", id: kept.open });
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
          <button type="button" id="forget" onClick={forget}>
            Remove
          </button>
        </div>
      )}
      <div class="buttons">
        {/* Not disabled after the last step: a button that is disabled under the finger drops the keyboard's place. */}
        <button
          type="button"
          id="undo"
          aria-disabled={!canUndo}
          onClick={() => canUndo && dispatch({ does: "undo" })}
        >
          Undo
        </button>
        <button type="button" id="start-over" onClick={startOver}>
          Start over
        </button>
        <button
          type="button"
          id="new-session"
          ref={anew}
          onClick={() => dispatch({ does: "new", draft: emptyDraft(freeId(kept), today()) })}
        >
          New session
        </button>
        <select
          aria-label="Units"
          id="units"
          value={kept.units}
          onChange={(event) => {
            const units = event.currentTarget.value as UnitSet;
            rememberUnits(units);
            dispatch({ does: "units", units });
          }}
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

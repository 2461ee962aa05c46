import { GOALS, type Goal } from "../fitting/session.ts";
import type { DeskAction } from "./desk.ts";
import type { Facts } from "./draft.ts";
import { TextField } from "./fields.tsx";
import { GOAL_WORDS } from "./goal-words.ts";

interface SessionFactsProps {
  readonly facts: Facts;
  readonly dispatch: (action: DeskAction) => void;
}

/** Who, when, where, and what is wanted. */
export function SessionFacts({ facts, dispatch }: SessionFactsProps) {
  const tell = (told: Partial<Facts>) => dispatch({ does: "facts", facts: told });
  return (
    <>
      <div class="fields">
        <TextField label="Player" value={facts.player} onChange={(player = "") => tell({ player })} />
        <TextField label="Date" type="date" value={facts.date} onChange={(date = "") => tell({ date })} />
        <TextField label="Place or shop" value={facts.place} onChange={(place = "") => tell({ place })} />
        <TextField
          label="Title on the sheets"
          value={facts.title}
          onChange={(title = "") => tell({ title })}
        />
        <div>
          <label for="goal">What is wanted most</label>
          <select
            id="goal"
            value={facts.goal}
            onChange={(event) => tell({ goal: event.currentTarget.value as Goal })}
          >
            {GOALS.map((goal) => (
              <option key={goal} value={goal}>
                {GOAL_WORDS[goal]}
              </option>
            ))}
          </select>
        </div>
      </div>
      <label class="choice">
        <input
          type="checkbox"
          checked={facts.leftHanded}
          onChange={(event) => tell({ leftHanded: event.currentTarget.checked })}
        />{" "}
        Left-handed player
      </label>
    </>
  );
}

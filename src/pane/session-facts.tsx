import type { DeskAction } from "./desk.ts";
import type { Facts } from "./draft.ts";
import { TextField } from "./fields.tsx";

interface SessionFactsProps {
  readonly facts: Facts;
  readonly dispatch: (action: DeskAction) => void;
}

/** Who, when and where. */
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

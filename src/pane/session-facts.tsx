import { useState } from "preact/hooks";
import type { UnitSet } from "../shots/unit-set.ts";
import type { DeskAction } from "./desk.ts";
import type { Facts } from "./draft.ts";
import { TextField } from "./fields.tsx";
import type { Figures } from "./figures.ts";
import { useFetched } from "./use-fetched.ts";

const fetchAirFields = () => import("./air-fields.tsx");

interface SessionFactsProps {
  readonly facts: Facts;
  readonly units: UnitSet;
  readonly figures: Figures;
  readonly dispatch: (action: DeskAction) => void;
}

/** Who, when, where and in what air. */
export function SessionFacts({ facts, units, figures, dispatch }: SessionFactsProps) {
  const [airOpen, setAirOpen] = useState(false);
  const air = useFetched(fetchAirFields, airOpen);
  const tell = (told: Partial<Facts>) => dispatch({ does: "facts", facts: told });
  const tick = (key: "leftHanded" | "fill", words: string) => (
    <label class="choice">
      <input
        type="checkbox"
        checked={facts[key]}
        onChange={(event) => tell({ [key]: event.currentTarget.checked })}
      />{" "}
      {words}
    </label>
  );
  return (
    <>
      <div class="fields roomy">
        <TextField label="Player" value={facts.player} onChange={(player = "") => tell({ player })} />
        <TextField label="Date" type="date" value={facts.date} onChange={(date = "") => tell({ date })} />
        <TextField label="Place or shop" value={facts.place} onChange={(place = "") => tell({ place })} />
        <TextField
          label="Title on the sheets"
          value={facts.title}
          onChange={(title = "") => tell({ title })}
        />
      </div>
      {tick("leftHanded", "Left-handed player")}
      {tick("fill", "Compute what the table lacks (carry, height, landing angle)")}
      <div class="card">
        <details id="air" open={airOpen} onToggle={(event) => setAirOpen(event.currentTarget.open)}>
          <summary>Air: {Object.keys(facts.air).length > 0 ? "as stated" : "not stated"}</summary>
          {air && (
            <air.AirFields air={facts.air} units={units} figures={figures} tell={(air) => tell({ air })} />
          )}
        </details>
      </div>
    </>
  );
}

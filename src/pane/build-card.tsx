import type { BuildSpec } from "../fitting/build-spec.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import { BUILD_FIELDS, describeBuild } from "./build-fields.ts";
import type { DeskAction } from "./desk.ts";
import type { BuildDetails } from "./draft.ts";
import { Sign } from "./drawing.tsx";
import { NumberField, TextField } from "./fields.tsx";
import type { Figures } from "./figures.ts";

interface BuildCardProps {
  /** The build's name in the text. */
  readonly was: string;
  readonly spec: BuildSpec;
  readonly place: number;
  readonly baseline: boolean;
  readonly units: UnitSet;
  readonly figures: Figures;
  readonly dispatch: (action: DeskAction) => void;
}

/** One build: its name, whether it is the baseline, and behind a fold what it is made of. */
export function BuildCard({ was, spec, place, baseline, units, figures, dispatch }: BuildCardProps) {
  const tell = (details: BuildDetails) => dispatch({ does: "build", name: was, details });
  return (
    <div class="card">
      <label class="choice">
        <input
          type="radio"
          name="baseline"
          checked={baseline}
          onChange={() => dispatch({ does: "facts", facts: { baseline: was } })}
        />
        <Sign place={place} /> <b>{spec.name}</b>
        {baseline && <span class="brief">baseline</span>}
      </label>
      <details>
        <summary>{describeBuild(spec, units, figures) || "What it is made of"}</summary>
        <div class="fields">
          <div class="whole">
            <TextField
              label="Name"
              of={was}
              value={spec.name}
              onChange={(name) => tell({ name: name ?? was })}
            />
          </div>
          {BUILD_FIELDS.map((field) =>
            field.kind === "text" ? (
              <TextField
                key={field.key}
                label={field.label}
                of={spec.name}
                value={spec[field.key] ?? ""}
                onChange={(value) => tell({ [field.key]: value ?? null })}
              />
            ) : (
              <NumberField
                key={field.key}
                label={`${field.label}, ${field.unit(units)}`}
                of={spec.name}
                value={spec[field.key] === undefined ? undefined : spec[field.key]! * field.times(units)}
                least={field.least * field.times(units)}
                most={field.most * field.times(units)}
                figures={figures}
                onChange={(value) =>
                  tell({ [field.key]: value === undefined ? null : value / field.times(units) })
                }
              />
            ),
          )}
        </div>
      </details>
    </div>
  );
}

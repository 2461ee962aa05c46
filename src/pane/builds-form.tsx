import type { BuildSpec } from "../fitting/build-spec.ts";
import { buildNames } from "../fitting/session.ts";
import { BuildCard } from "./build-card.tsx";
import { calledNow } from "./called-now.ts";
import type { Derived } from "./derive.ts";
import type { DeskAction } from "./desk.ts";
import type { Draft } from "./draft.ts";
import type { Figures } from "./figures.ts";

interface BuildsFormProps {
  readonly derived: Derived;
  readonly draft: Draft;
  readonly figures: Figures;
  readonly dispatch: (action: DeskAction) => void;
}

/** What each build is, and which one the others are held against. */
export function BuildsForm({ derived, draft, figures, dispatch }: BuildsFormProps) {
  const { session, table } = derived;
  const specs = new Map(session.builds.map((build) => [build.name, build]));
  const places = new Map(session.builds.map((build, place) => [build.name, place]));
  return (
    <fieldset>
      <legend>Builds; the chosen one is what the others are held against</legend>
      {buildNames(table).map((was) => {
        const name = calledNow(was, draft.builds);
        const spec: BuildSpec = specs.get(name) ?? { name };
        return (
          <BuildCard
            key={was}
            was={was}
            spec={spec}
            place={places.get(name) ?? 0}
            baseline={session.baseline === name}
            units={session.units}
            figures={figures}
            dispatch={dispatch}
          />
        );
      })}
    </fieldset>
  );
}

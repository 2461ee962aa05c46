import type { ShotTable } from "../shots/shot-table.ts";
import { count } from "./count.ts";
import type { Derived } from "./derive.ts";
import type { DeskAction } from "./desk.ts";
import { doubtsOf } from "./doubts.ts";
import { Sign } from "./drawing.tsx";
import type { Figures } from "./figures.ts";
import { ShotLine } from "./shot-line.tsx";

interface JudgeShotsProps {
  readonly derived: Derived;
  readonly figures: Figures;
  readonly dispatch: (action: DeskAction) => void;
}

/** Beyond this many shots only those that something speaks against are listed; the sheet holds them all. */
const MOST_LISTED = 1000;

/** The shots, build by build, each with its tick. Nothing is unticked but by hand. */
export function JudgeShots({ derived: { session, far }, figures, dispatch }: JudgeShotsProps) {
  const { table } = session;
  const doubts = doubtsOf(far, session.units, figures);
  const long = table.size > MOST_LISTED;
  return (
    <>
      <p class="quiet">
        A ticked shot counts.{" "}
        {doubts.size > 0 && "Shots far from the rest are marked; whether they count is your choice."}
      </p>
      {long && (
        <p class="quiet">
          There are {count(table.size, "shot")}: only marked ones are listed. All can be ticked on the Shots
          sheet.
        </p>
      )}
      {session.builds.map(({ name }, place) => {
        const shots = shotsOf(table, name).filter((i) => !long || doubts.has(i) || !table.keep[i]);
        if (long && shots.length === 0) return null;
        return (
          <fieldset key={name}>
            <legend>
              <Sign place={place} /> {name}
            </legend>
            {shots.map((i) => (
              <ShotLine
                key={table.row[i]}
                session={session}
                index={i}
                doubt={doubts.get(i) ?? ""}
                figures={figures}
                dispatch={dispatch}
              />
            ))}
          </fieldset>
        );
      })}
    </>
  );
}

function shotsOf(table: ShotTable, name: string): number[] {
  return [...table.build.keys()].filter((i) => table.build[i] === name);
}

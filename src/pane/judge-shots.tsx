import type { Session } from "../fitting/session.ts";
import type { ShotTable } from "../shots/shot-table.ts";
import { count } from "./count.ts";
import type { Derived } from "./derive.ts";
import type { DeskAction } from "./desk.ts";
import { displayOf, sideOf } from "./display.ts";
import { doubtsOf } from "./doubts.ts";
import { Sign } from "./drawing.tsx";
import type { Figures } from "./figures.ts";
import { ShotLine } from "./shot-line.tsx";
import { whenChanged } from "./when-changed.ts";

interface JudgeShotsProps {
  readonly derived: Derived;
  readonly figures: Figures;
  readonly dispatch: (action: DeskAction) => void;
}

/** Beyond this many shots only those that something speaks against are listed; the sheet holds them all. */
const MOST_LISTED = 1000;

/** The shots, build by build, each with its tick. Nothing is unticked but by hand. */
export const JudgeShots = whenChanged(({ derived: { session, far }, figures, dispatch }: JudgeShotsProps) => {
  const { table } = session;
  const words = wordsOfShots(session, figures);
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
                row={table.row[i]!}
                title={table.shot[i] ? `Shot ${table.shot[i]}` : `Row ${table.row[i]}`}
                words={words(i)}
                keep={table.keep[i]!}
                doubt={doubts.get(i) ?? ""}
                dispatch={dispatch}
              />
            ))}
          </fieldset>
        );
      })}
    </>
  );
});

/** Where each shot went, by its place in the table. */
function wordsOfShots({ table, units, computed }: Session, figures: Figures): (shot: number) => string {
  const [carry, offline] = [displayOf("carry", units, figures), displayOf("offline", units, figures)];
  const [carries, sides] = [table.values.get("carry"), table.values.get("offline")];
  return (shot) => {
    const [far, side] = [carries?.[shot] ?? Number.NaN, sides?.[shot] ?? Number.NaN];
    const mark = computed?.get("carry")?.has(shot) ? " (computed)" : "";
    const words = Number.isNaN(far) ? "no carry" : carry.full(far) + mark;
    return Number.isNaN(side) ? words : `${words}, ${sideOf(offline, side)}`;
  };
}

function shotsOf(table: ShotTable, name: string): number[] {
  return [...table.build.keys()].filter((i) => table.build[i] === name);
}

import type { Session } from "../fitting/session.ts";
import type { DeskAction } from "./desk.ts";
import { displayOf, sideOf } from "./display.ts";
import type { Figures } from "./figures.ts";

interface ShotLineProps {
  readonly session: Session;
  readonly index: number;
  /** Why the shot deserves a second look; empty where it does not. */
  readonly doubt: string;
  readonly figures: Figures;
  readonly dispatch: (action: DeskAction) => void;
}

/** One shot with its tick, and beside it what speaks against it. */
export function ShotLine({ session, index, doubt, figures, dispatch }: ShotLineProps) {
  const { table, units } = session;
  const row = table.row[index]!;
  const keep = table.keep[index]!;
  const carry = table.values.get("carry")?.[index] ?? Number.NaN;
  const offline = table.values.get("offline")?.[index] ?? Number.NaN;
  const words = [
    Number.isNaN(carry) ? "no carry" : displayOf("carry", units, figures).full(carry),
    ...(Number.isNaN(offline) ? [] : [sideOf(displayOf("offline", units, figures), offline)]),
  ];
  return (
    <div class="shot">
      <label>
        <input
          type="checkbox"
          checked={keep}
          onChange={(event) => dispatch({ does: "tick", rows: [row], keep: event.currentTarget.checked })}
        />
        <span class={keep ? "" : "left-out"}>
          <b>{table.shot[index] ? `Shot ${table.shot[index]}` : `Row ${row}`}</b> {words.join(", ")}
        </span>
      </label>
      {doubt && <p class="doubt">{doubt}</p>}
    </div>
  );
}

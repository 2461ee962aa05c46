import type { DeskAction } from "./desk.ts";
import { whenChanged } from "./when-changed.ts";

interface ShotLineProps {
  /** Row of the text, by which ticks are kept. */
  readonly row: number;
  readonly title: string;
  /** Where it went. */
  readonly words: string;
  readonly keep: boolean;
  /** Why the shot deserves a second look; empty where it does not. */
  readonly doubt: string;
  readonly dispatch: (action: DeskAction) => void;
}

/** One shot with its tick, and beside it what speaks against it. */
export const ShotLine = whenChanged(({ row, title, words, keep, doubt, dispatch }: ShotLineProps) => (
  <div class="shot">
    <label>
      <input
        type="checkbox"
        checked={keep}
        aria-describedby={doubt ? `doubt-${row}` : undefined}
        onChange={(event) => dispatch({ does: "tick", rows: [row], keep: event.currentTarget.checked })}
      />
      <span class={keep ? "" : "left-out"}>
        <b>{title}</b> {words}
      </span>
    </label>
    {doubt && (
      <p class="doubt" id={`doubt-${row}`}>
        {doubt}
      </p>
    )}
  </div>
));

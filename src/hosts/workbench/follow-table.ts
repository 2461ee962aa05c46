import { isProblem, type Outcome } from "../../outcome/problem.ts";
import type { StopFollowing, Told } from "../host.ts";
import type { Grid } from "./grid.ts";

/** A burst of entries is told once, milliseconds after the last. */
const PAUSE = 120;

/** What changes cells, calculates them, or changes where tables stand. */
const CHANGES = /set-range-values|formula-calculation-result|array-formula|table|insert|remove/;

/** Follows a table of the grid, or a sheet of it, which `read` gives as text. */
export function followTable(grid: Grid, read: () => Outcome<string>, told: Told): StopFollowing {
  const stop = async () => {
    clearTimeout(pending);
    heard.dispose();
  };
  const tell = () => {
    const text = read();
    if (isProblem(text)) void stop();
    told(text);
  };
  // Once also without a change: what came since the caller's own reading is in it.
  let pending = setTimeout(tell, PAUSE);
  const heard = grid.addEvent(grid.Event.CommandExecuted, ({ id }) => {
    if (!CHANGES.test(id)) return;
    clearTimeout(pending);
    pending = setTimeout(tell, PAUSE);
  });
  return stop;
}

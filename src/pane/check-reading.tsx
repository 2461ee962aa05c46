import type { ShotTable } from "../shots/shot-table.ts";
import { ColumnList } from "./column-list.tsx";
import type { DeskAction } from "./desk.ts";
import type { Draft } from "./draft.ts";
import { ProblemList } from "./problem-list.tsx";
import { whenChanged } from "./when-changed.ts";

interface CheckReadingProps {
  readonly table: ShotTable;
  readonly draft: Draft;
  readonly dispatch: (action: DeskAction) => void;
}

/** How the text was understood, with each column open to correction and each doubt beside its row. */
export const CheckReading = whenChanged(({ table, draft, dispatch }: CheckReadingProps) => (
  <>
    {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
    <section class="wide" tabIndex={0} aria-label="Columns">
      <ColumnList columns={table.columns} corrections={draft.corrections} dispatch={dispatch} />
    </section>
    <ProblemList problems={table.problems} />
    {table.skipped.length > 0 && (
      <>
        <h3>Rows left out</h3>
        <ul class="plain">
          {table.skipped.slice(0, 50).map((skipped) => (
            <li key={skipped.row}>
              Row {skipped.row}: {skipped.reason}
            </li>
          ))}
        </ul>
      </>
    )}
    {table.notes.map((note) => (
      <p key={note} class="quiet">
        {note}
      </p>
    ))}
  </>
));

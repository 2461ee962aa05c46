import type { ShotTable } from "../shots/shot-table.ts";
import { ColumnList } from "./column-list.tsx";
import type { DeskAction } from "./desk.ts";
import { ProblemList } from "./problem-list.tsx";
import { SkippedRows } from "./skipped-rows.tsx";
import { whenChanged } from "./when-changed.ts";

interface CheckReadingProps {
  readonly table: ShotTable;
  readonly dispatch: (action: DeskAction) => void;
}

/** How the text was understood, with each column open to correction and each doubt beside its row. */
export const CheckReading = whenChanged(({ table, dispatch }: CheckReadingProps) => (
  <>
    {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
    <section class="wide" tabIndex={0} aria-label="Columns">
      <ColumnList columns={table.columns} dispatch={dispatch} />
    </section>
    <ProblemList problems={table.problems} />
    <SkippedRows skipped={table.skipped} />
    {table.notes.map((note) => (
      <p key={note} class="quiet">
        {note}
      </p>
    ))}
  </>
));

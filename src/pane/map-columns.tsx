import { headingsOf } from "../shots/header-signature.ts";
import type { ColumnReading } from "../shots/shot-table.ts";
import { ColumnList } from "./column-list.tsx";
import type { DeskAction } from "./desk.ts";
import type { Draft } from "./draft.ts";

interface MapColumnsProps {
  readonly draft: Draft;
  readonly dispatch: (action: DeskAction) => void;
}

/**
 * Where no heading was understood the fitter says what the columns hold, once: the workbook remembers it for all
 * tables with these headings.
 */
export function MapColumns({ draft, dispatch }: MapColumnsProps) {
  const columns = headingsOf(draft.text).map((header, index): ColumnReading => {
    const { key = null, unit = "" } = draft.corrections[String(index + 1)] ?? {};
    return { column: index + 1, header, key, unit, unitFrom: unit === "" ? "none" : "header" };
  });
  if (columns.length === 0) return null;
  return (
    <>
      <p>Say what the columns hold; tables with these headings are then read so from now on.</p>
      <ColumnList columns={columns} dispatch={dispatch} />
    </>
  );
}

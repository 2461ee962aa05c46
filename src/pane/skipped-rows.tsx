import { useState } from "preact/hooks";
import type { ShotTable } from "../shots/shot-table.ts";
import { ShowMore } from "./show-more.tsx";

const SHOWN_FIRST = 50;

/** Rows that are no shots, each with the reason. A long list opens only when asked for. */
export function SkippedRows({ skipped }: Pick<ShotTable, "skipped">) {
  const [most, setMost] = useState(SHOWN_FIRST);
  if (skipped.length === 0) return null;
  return (
    <>
      <h3>Rows left out: {skipped.length}</h3>
      <ul class="plain" id="skipped">
        {skipped.slice(0, most).map(({ row, reason }) => (
          <li key={row}>
            Row {row}: {reason}
          </li>
        ))}
      </ul>
      <ShowMore of={skipped.length} shown={most} show={setMost} />
    </>
  );
}

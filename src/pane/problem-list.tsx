import { useState } from "preact/hooks";
import type { TableProblem } from "../shots/shot-table.ts";
import { count } from "./count.ts";
import { ShowMore } from "./show-more.tsx";

const SHOWN_FIRST = 10;

/** Each thing that was not understood; its sentence begins with row and column and says what was found. A long list opens only when asked for. */
export function ProblemList({ problems }: { readonly problems: readonly TableProblem[] }) {
  const [most, setMost] = useState(SHOWN_FIRST);
  if (problems.length === 0) return <p class="quiet">Every cell was understood.</p>;
  return (
    <>
      <h3>{count(problems.length, "thing")} to look at</h3>
      <p class="quiet">Left as they are. Correct them where they come from, or untick the shot.</p>
      <ul class="problems">
        {problems.slice(0, most).map((problem) => (
          <li key={`${problem.row} ${problem.column} ${problem.message}`}>
            <Told message={problem.message} />
          </li>
        ))}
      </ul>
      <ShowMore of={problems.length} shown={most} show={setMost} />
    </>
  );
}

/** The sentence with its row and column set off, by which it is found in the table. */
function Told({ message }: { readonly message: string }) {
  const [, place = "", rest = message] = /^(Row \d+[^:]*)(.*)$/s.exec(message) ?? [];
  return (
    <>
      <b>{place}</b>
      {rest}
    </>
  );
}

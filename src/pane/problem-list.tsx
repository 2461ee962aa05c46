import { useState } from "preact/hooks";
import type { TableProblem } from "../shots/shot-table.ts";
import { count } from "./count.ts";

const SHOWN_FIRST = 10;

/** Each thing that was not understood, with its row and column. A long list opens only when asked for. */
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
            <b>
              Row {problem.row}
              {problem.column > 0 && `, column ${problem.column}`}
            </b>
            {problem.found !== "" && <code>{problem.found}</code>} {problem.message}
          </li>
        ))}
      </ul>
      {problems.length > most && (
        <button type="button" onClick={() => setMost(most + 100)}>
          Show {Math.min(100, problems.length - most)} more
        </button>
      )}
    </>
  );
}

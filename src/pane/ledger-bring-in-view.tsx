import { useState } from "preact/hooks";
import type { TrackingOptions } from "../ledger/map-tracking-sheet.ts";
import { isProblem } from "../outcome/problem.ts";
import type { UnitSet } from "../shots/unit-set.ts";
import type { BroughtIn } from "./ledger-bring-in.ts";
import { LedgerColumnList } from "./ledger-column-list.tsx";
import { LedgerRowsTable } from "./ledger-rows-table.tsx";
import type { LedgerWork } from "./ledger-view.tsx";

interface LedgerBringInProps {
  readonly brought: BroughtIn;
  /** Does one thing at a time and says what came of it, whatever breaks. */
  readonly run: (work: LedgerWork) => void;
  readonly onBrought: (brought: BroughtIn | null) => void;
  readonly keep: LedgerWork;
}

const UNITS: Readonly<Record<UnitSet, string>> = {
  us: "yards, miles an hour",
  metric: "metres, metres a second",
  "metric-kmh": "metres, kilometres an hour",
};

/** What a sheet would become, line by line with its figures, and what can be put right before any of it is kept. */
export function LedgerBringIn({ brought, run, onBrought, keep }: LedgerBringInProps) {
  const { text, options, mapped } = brought;
  const { preview, left, questions, assumed, rows, columns } = mapped;
  const [source, setSource] = useState(options.source ?? "");
  // From the text as it was read: what is selected in the workbook has moved on.
  const again = (more: TrackingOptions) =>
    run(async ({ bringInText }) => {
      const found = bringInText(text, { ...options, ...more });
      if (isProblem(found)) return found.message;
      onBrought(found);
      return "";
    });
  return (
    <section aria-label="What the sheet becomes">
      <h3>
        {rows.length} rows from {preview.length} lines
      </h3>
      {questions.map((question) => (
        <p key={question} class="problem">
          {question}{" "}
          <button type="button" onClick={() => again({ days: "day first" })}>
            Day first
          </button>{" "}
          <button type="button" onClick={() => again({ days: "month first" })}>
            Month first
          </button>
        </p>
      ))}
      {assumed.map((sentence) => (
        <p key={sentence} class="quiet">
          {sentence}
        </p>
      ))}
      {columns.length > 0 && (
        <>
          <label for="tracking-units">Figures without a unit are</label>
          <select
            id="tracking-units"
            value={options.units ?? "us"}
            onChange={(event) => again({ units: event.currentTarget.value as UnitSet })}
          >
            {Object.entries(UNITS).map(([units, words]) => (
              <option key={units} value={units}>
                {words}
              </option>
            ))}
          </select>
          <label for="tracking-source">What the sheet is called</label>
          <input
            id="tracking-source"
            value={source}
            onInput={(event) => setSource(event.currentTarget.value)}
            onChange={() => again({ source })}
          />
          <LedgerColumnList
            columns={columns}
            onColumns={(told) => again({ columns: { ...options.columns, ...told } })}
          />
        </>
      )}
      <LedgerRowsTable preview={preview} />
      {left.length > 0 && <h3>What did not</h3>}
      <ul>
        {left.map(({ line, cell, why }) => (
          <li key={`${line} ${cell} ${why}`}>
            {line > 0 && `Line ${line}: `}
            {cell} <span class="quiet">({why})</span>
          </li>
        ))}
      </ul>
      {columns.length > 0 && (
        <p class="quiet">
          Brought in again after an edit, a line is put right by its player, day, club and build; where one of
          these was changed it comes as a new row, and the old one stays.
        </p>
      )}
      <div class="buttons">
        <button type="button" id="keep-tracking" onClick={() => run(keep)}>
          Keep these rows in the ledger
        </button>
        <button type="button" onClick={() => onBrought(null)}>
          Leave it
        </button>
      </div>
    </section>
  );
}

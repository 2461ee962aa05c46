import type { Host } from "../hosts/host.ts";
import type { MappedSheet } from "../ledger/map-tracking-sheet.ts";
import { isProblem } from "../outcome/problem.ts";

interface LedgerBringInProps {
  readonly host: Host;
  readonly mapped: MappedSheet;
  readonly onMapped: (mapped: MappedSheet | null) => void;
  readonly onSaid: (words: string) => void;
}

const SHOWN = 8;

/** What a tracking sheet would become, line by line, before any of it is kept. */
export function LedgerBringIn({ host, mapped, onMapped, onSaid }: LedgerBringInProps) {
  const { preview, left, questions, rows } = mapped;
  const again = async (days: "day first" | "month first") => {
    const { bringInTracking } = await import("./ledger-desk.ts");
    const found = await bringInTracking(host, days);
    if (isProblem(found)) onSaid(found.message);
    else onMapped(found);
  };
  const keep = async () => {
    const { keepRows, keepWords } = await import("./ledger-desk.ts");
    onSaid(keepWords(await keepRows(host, rows, [])));
    onMapped(null);
  };
  return (
    <section aria-label="What the tracking sheet becomes">
      <h3>
        {rows.length} rows from {preview.length} lines
      </h3>
      {questions.map((question) => (
        <p key={question} class="problem">
          {question}{" "}
          <button type="button" onClick={() => void again("day first")}>
            Day first
          </button>{" "}
          <button type="button" onClick={() => void again("month first")}>
            Month first
          </button>
        </p>
      ))}
      <ul>
        {preview.slice(0, SHOWN).map(({ line, was, rows: became }) => (
          <li key={line}>
            Line {line}: {was} <span class="quiet">became</span>{" "}
            {became
              .map((row) => `${row.player ?? "nobody"}, ${row.date ?? "no day"}, ${row.build}`)
              .join("; ")}
          </li>
        ))}
      </ul>
      {preview.length > SHOWN && <p class="quiet">and {preview.length - SHOWN} lines more</p>}
      {left.length > 0 && <h3>What did not</h3>}
      <ul>
        {left.map(({ line, cell, why }) => (
          <li key={`${line} ${cell}`}>
            {line > 0 && `Line ${line}: `}
            {cell} <span class="quiet">({why})</span>
          </li>
        ))}
      </ul>
      <div class="buttons">
        <button type="button" id="keep-tracking" onClick={() => void keep()}>
          Keep these rows in the ledger
        </button>
        <button type="button" onClick={() => onMapped(null)}>
          Leave it
        </button>
      </div>
    </section>
  );
}

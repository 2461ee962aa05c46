import { LEDGER } from "../ledger/schema.ts";
import { TRACKING_KEYS, type TrackingColumn } from "../ledger/tracking-heading.ts";

interface LedgerColumnListProps {
  readonly columns: readonly TrackingColumn[];
  readonly onColumns: (told: Readonly<Record<string, string | null>>) => void;
}

const HEADINGS = new Map(LEDGER.columns.map(({ key, heading }) => [key, heading]));

/** What each column of a tracking sheet was taken for; any of them may be taken for something else. */
export function LedgerColumnList({ columns, onColumns }: LedgerColumnListProps) {
  const named = columns.filter(({ heading }) => heading !== "");
  return (
    <details>
      <summary>What the columns hold</summary>
      {named.map(({ heading, key }, place) => (
        <div key={`${place} ${heading}`}>
          <label for={`tracking-column-${place}`}>{heading}</label>
          <select
            id={`tracking-column-${place}`}
            value={key ?? ""}
            onChange={(event) => onColumns({ [heading]: event.currentTarget.value || null })}
          >
            <option value="">none of these; into notes</option>
            {TRACKING_KEYS.map((one) => (
              <option key={one} value={one}>
                {HEADINGS.get(one)}
              </option>
            ))}
          </select>
        </div>
      ))}
    </details>
  );
}

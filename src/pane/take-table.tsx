import { useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { isProblem } from "../outcome/problem.ts";

interface TakeTableProps {
  readonly host: Host;
  readonly take: (text: string) => void;
  /** Says why nothing was taken. */
  readonly refuse: (why: string) => void;
}

const WHOLE_SHEET = "";

/** A table of the workbook, or all of the sheet in front, as the source: for shops that keep their shots there. */
export function TakeTable({ host, take, refuse }: TakeTableProps) {
  const [names, setNames] = useState<readonly string[] | null>(null);
  const [chosen, setChosen] = useState(WHOLE_SHEET);
  const look = async () => {
    const found = await host.tables();
    if (isProblem(found)) return refuse(found.message);
    refuse("");
    setNames(found);
    setChosen(found[0] ?? WHOLE_SHEET);
  };
  const bring = async () => {
    const text = await host.tableText(chosen === WHOLE_SHEET ? undefined : chosen);
    if (isProblem(text)) refuse(text.message);
    else take(text);
  };
  return (
    <div class="buttons">
      {names === null ? (
        <button type="button" onClick={look}>
          Take a table of this workbook…
        </button>
      ) : (
        <>
          <select
            aria-label="Table to take"
            value={chosen}
            onChange={(event) => setChosen(event.currentTarget.value)}
          >
            {names.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
            <option value={WHOLE_SHEET}>All of the sheet in front</option>
          </select>
          <button type="button" onClick={bring}>
            Take it
          </button>
        </>
      )}
    </div>
  );
}

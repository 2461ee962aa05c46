import { useEffect, useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { isProblem } from "../outcome/problem.ts";
import type { Source } from "./follow-source.ts";

interface TakeTableProps {
  readonly host: Host;
  /** Of the session on the desk. */
  readonly draft: string;
  readonly take: (text: string) => void;
  /** Says why nothing was taken. */
  readonly refuse: (why: string) => void;
  readonly follow: (source: Source) => void;
}

const WHOLE_SHEET = "";

/** A table of the workbook, or all of the sheet in front, as the source: for shops that keep their shots there. */
export function TakeTable({ host, draft, take, refuse, follow }: TakeTableProps) {
  const [names, setNames] = useState<readonly string[] | null>(null);
  const [refused, setRefused] = useState(false);
  const [chosen, setChosen] = useState(WHOLE_SHEET);
  const [following, setFollowing] = useState(false);
  const look = async () => {
    setRefused(false);
    const found = await host.tables();
    if (isProblem(found)) {
      setRefused(true);
      return refuse(found.message);
    }
    refuse("");
    setNames(found);
    setChosen(found[0] ?? WHOLE_SHEET);
  };
  useEffect(() => void look(), [host]);
  const bring = async () => {
    const name = chosen === WHOLE_SHEET ? undefined : chosen;
    const text = await host.tableText(name);
    if (isProblem(text)) return refuse(text.message);
    take(text);
    if (following) follow({ draft, text, ...(name !== undefined && { name }) });
  };
  if (refused) {
    return (
      <div class="buttons">
        <button type="button" id="look-again" onClick={() => void look()}>
          Look for tables again
        </button>
      </div>
    );
  }
  if (names === null) return <p class="quiet">Looking for tables…</p>;
  return (
    <>
      <div class="buttons">
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
      </div>
      {host.follow && (
        <label class="choice">
          <input
            type="checkbox"
            checked={following}
            onChange={(event) => setFollowing(event.currentTarget.checked)}
          />
          Follow it: rows added there come in by themselves
        </label>
      )}
    </>
  );
}

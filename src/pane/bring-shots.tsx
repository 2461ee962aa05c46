import { useRef, useState } from "preact/hooks";
import { DEMO_TEXT } from "../fitting/demo.ts";
import type { Host } from "../hosts/host.ts";
import { isProblem, type Problem } from "../outcome/problem.ts";
import { AddShots } from "./add-shots.tsx";
import { demoDraft } from "./demo-draft.ts";
import type { DeskAction } from "./desk.ts";
import type { Draft } from "./draft.ts";
import { fetchTables } from "./fetch-parts.ts";
import type { Source } from "./follow-source.ts";
import { isTyping } from "./is-typing.ts";
import { LONG_TEXT } from "./long-text.ts";
import { MapColumns } from "./map-columns.tsx";
import { textOfSource } from "./text-of-source.ts";
import { today } from "./today.ts";
import { useFetched } from "./use-fetched.ts";

interface BringShotsProps {
  readonly host: Host;
  readonly draft: Draft;
  /** Why the text could not be read. */
  readonly problem: Problem | null;
  readonly dispatch: (action: DeskAction) => void;
  readonly follow: (source: Source) => void;
  /** Takes a file that is too long for the desk. */
  readonly takeLong: (file: File) => void;
}

/** Where shots come in: pasted, dropped as a file, or taken from the cells that are selected. */
export function BringShots({ host, draft, problem, dispatch, follow, takeLong }: BringShotsProps) {
  const [trouble, setTrouble] = useState("");
  const [over, setOver] = useState(false);
  const [asked, setAsked] = useState(false);
  const tables = useFetched(fetchTables, asked);
  const file = useRef<HTMLInputElement>(null);
  // Words that are dragged from within the box are moved inside it by the browser, and replace nothing.
  const ownWords = useRef(false);
  const take = (text: string, typed = false) => {
    setTrouble("");
    dispatch({ does: "text", text, typed, date: today() });
  };
  const takeFile = async (found: File | undefined) => {
    if (!found) return;
    if (await isArchive(found)) setTrouble(NO_TEXT);
    else if (found.size > LONG_TEXT) takeLong(found);
    else take(await textOfSource(found));
  };
  const drop = (dropped: DataTransfer | null) => {
    const text = dropped?.getData("text/plain") ?? "";
    if (dropped?.files[0]) void takeFile(dropped.files[0]);
    else if (text.trim() === "") setTrouble(NOTHING_DROPPED);
    else take(text);
  };
  const takeSelection = async () => {
    const text = await host.selection();
    if (isProblem(text)) setTrouble(text.message);
    else take(text);
  };
  const empty = draft.text.trim() === "";
  const isDemo = draft.text === DEMO_TEXT;
  return (
    <section
      aria-label="Shot table"
      class={over ? "drop over" : "drop"}
      onDragOver={(event) => {
        if (ownWords.current) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        if (ownWords.current) return;
        event.preventDefault();
        setOver(false);
        drop(event.dataTransfer);
      }}
    >
      {isDemo && (
        <p class="next">
          This is the invented demo session, ready to run. Paste your own table over it at any time.
        </p>
      )}
      {(empty || isDemo) && (
        <ol class="steps">
          <li>Copy the table of shots that your launch monitor gives, headings and all.</li>
          <li>Paste it here: what was understood shows at once, and nothing is changed.</li>
          <li>Press “Make the comparison sheets”: they are added, and no sheet of yours is touched.</li>
        </ol>
      )}
      {empty && (
        <p class="quiet">
          Before the first ball: everyone behind the player, and a look at the net and the mat.
        </p>
      )}
      <label for="shots-text">Shot table, as copied or dropped here</label>
      <textarea
        id="shots-text"
        rows={empty ? 6 : 4}
        spellcheck={false}
        wrap="off"
        value={draft.text}
        aria-invalid={problem !== null}
        aria-describedby={problem ? "shots-problem" : undefined}
        onFocus={(event) => isDemo && event.currentTarget.select()}
        onPaste={(event) => {
          const pasted = event.clipboardData?.getData("text/plain") ?? "";
          if (pasted.length < LONG_TEXT && (pasted === "" || !isAllSelected(event.currentTarget))) return;
          // Browsers take half a minute to insert thousands of lines; setting them takes no time.
          event.preventDefault();
          take(pasted);
        }}
        onDragStart={() => {
          ownWords.current = true;
        }}
        onDragEnd={() => {
          ownWords.current = false;
        }}
        onInput={(event) => take(event.currentTarget.value, isTyping(event, draft.text))}
      />
      {problem && (
        <p id="shots-problem" class="problem" role="alert">
          {problem.message}
        </p>
      )}
      {trouble && (
        <p class="problem" role="alert">
          {trouble}
        </p>
      )}
      <div class="buttons">
        <button type="button" onClick={takeSelection}>
          Take the selected cells
        </button>
        <button type="button" onClick={() => file.current?.click()}>
          Open a file
        </button>
        <input
          ref={file}
          type="file"
          hidden
          aria-label="File with a shot table"
          accept=".csv,.tsv,.txt,text/*"
          onChange={(event) => {
            const { currentTarget: box } = event;
            void takeFile(box.files?.[0]);
            // Emptied, for choosing the same file once more would be no change otherwise.
            box.value = "";
          }}
        />
        <button
          type="button"
          id="use-demo"
          onClick={() => dispatch({ does: "replace", draft: demoDraft(draft.id) })}
        >
          Use the demo session
        </button>
      </div>
      {tables ? (
        <tables.TakeTable host={host} draft={draft.id} take={take} refuse={setTrouble} follow={follow} />
      ) : (
        <div class="buttons">
          <button type="button" onClick={() => setAsked(true)}>
            Take a table of this workbook…
          </button>
        </div>
      )}
      {problem && <MapColumns draft={draft} dispatch={dispatch} />}
      {!empty && !problem && <AddShots dispatch={dispatch} />}
    </section>
  );
}

const NOTHING_DROPPED =
  "What was dropped holds no text, so nothing was changed. Rows of a table, or a file with one, would do.";
const NO_TEXT =
  "This file is a workbook or an archive, not a text. Open it in the spreadsheet and take its cells, or save the table as .csv.";

/** Workbooks are zip archives, and those begin with these two letters. */
async function isArchive(file: File): Promise<boolean> {
  return (await file.slice(0, 2).text()) === "PK";
}

/** Whether a paste would replace everything there is. */
function isAllSelected(box: HTMLTextAreaElement): boolean {
  return box.selectionStart === 0 && box.selectionEnd === box.value.length;
}

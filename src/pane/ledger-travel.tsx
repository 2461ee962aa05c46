import { useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { isProblem } from "../outcome/problem.ts";
import type { BroughtIn } from "./ledger-bring-in.ts";
import type { LedgerWork } from "./ledger-view.tsx";

interface LedgerTravelProps {
  readonly host: Host;
  readonly run: (work: LedgerWork) => void;
  readonly onBrought: (brought: BroughtIn | null) => void;
}

/** The ledger on its way to another shop and back: as a text with or without names, and a text that was exported. */
export function LedgerTravel({ host, run, onBrought }: LedgerTravelProps) {
  const [secret, setSecret] = useState("");
  const [text, setText] = useState("");
  const save: LedgerWork = async ({ exportLedger, exportWords, unlessStopped }, { signal }) => {
    const made = await unlessStopped(exportLedger(host, secret), signal);
    setText(isProblem(made) || host.download ? "" : made.text);
    if (isProblem(made)) return made.message;
    host.download?.(made.text, secret === "" ? "ledger.csv" : "ledger-with-codes.csv");
    return exportWords(made, host.download !== undefined, host.name);
  };
  const take = (file: File | undefined) => {
    if (!file) return;
    run(async ({ bringInText }) => {
      const found = bringInText(await file.text());
      onBrought(isProblem(found) ? null : found);
      return isProblem(found) ? found.message : "";
    });
  };
  return (
    <details id="ledger-travel">
      <summary>Share the ledger, or bring in another one</summary>
      <label for="ledger-secret">A secret, so that codes stand for names (empty: names as they are)</label>
      <input
        id="ledger-secret"
        autocomplete="off"
        value={secret}
        onInput={(event) => setSecret(event.currentTarget.value)}
      />
      <div class="buttons">
        <button type="button" id="export-ledger" onClick={() => run(save)}>
          Export the ledger
        </button>
      </div>
      {text !== "" && (
        <>
          <label for="ledger-text">The ledger as text</label>
          <textarea
            id="ledger-text"
            readOnly
            rows={6}
            value={text}
            onFocus={(event) => event.currentTarget.select()}
          />
        </>
      )}
      <label for="ledger-file">An exported ledger or a tracking sheet as a file</label>
      <input
        id="ledger-file"
        type="file"
        accept=".csv,.tsv,.txt,text/*"
        onChange={(event) => {
          take(event.currentTarget.files?.[0]);
          // So that the same file can be chosen again after it was put right.
          event.currentTarget.value = "";
        }}
      />
    </details>
  );
}

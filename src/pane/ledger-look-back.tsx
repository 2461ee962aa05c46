import type { LookBack } from "../ledger/look-back.ts";

/** Now against then, a block for each kind of club. */
export function LedgerLookBack({ found }: { readonly found: readonly LookBack[] }) {
  return (
    <>
      {found.map(({ before, after, words, changes, notes }) => (
        <section key={`${before} ${words}`} aria-label={`${before} and ${after}`}>
          <h3>
            {before} and {after}
          </h3>
          <p>{words}</p>
          <ul>
            {changes.map((change) => (
              <li key={change.metric}>{change.words}</li>
            ))}
          </ul>
          {notes.map((note) => (
            <p key={note} class="quiet">
              {note}
            </p>
          ))}
        </section>
      ))}
    </>
  );
}

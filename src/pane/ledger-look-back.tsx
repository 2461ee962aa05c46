import type { LookBack } from "../ledger/look-back.ts";
import { localWords } from "../sheets/local-words.ts";
import { figuresFor } from "./figures.ts";

/** Now against then, a block for each kind of club. */
export function LedgerLookBack({ found }: { readonly found: readonly LookBack[] }) {
  const { decimalMark } = figuresFor();
  return (
    <>
      {found.map(({ before, after, build, words, changes, notes }) => {
        const local = (sentence: string) => localWords(sentence, [build], decimalMark);
        return (
          <section key={`${before} ${words}`} aria-label={`${before} and ${after}`}>
            <h3>
              {before} and {after}
            </h3>
            <p>{local(words)}</p>
            <ul>
              {changes.map((change) => (
                <li key={change.metric}>{local(change.words)}</li>
              ))}
            </ul>
            {notes.map((note) => (
              <p key={note} class="quiet">
                {local(note)}
              </p>
            ))}
          </section>
        );
      })}
    </>
  );
}

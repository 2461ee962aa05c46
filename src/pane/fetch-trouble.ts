type Listener = (missing: boolean) => void;

/** What asks again for a part that could not be fetched. */
const missing = new Set<() => void>();
const listeners = new Set<Listener>();

/** Notes that a part of the program could not be fetched, and how it is asked for again. Answers what takes that back. */
export function partMissing(again: () => void): () => void {
  missing.add(again);
  tell();
  return () => {
    if (missing.delete(again)) tell();
  };
}

/** Asks again for all parts that could not be fetched. */
export function fetchAgain(): void {
  const waiting = [...missing];
  missing.clear();
  tell();
  for (const again of waiting) again();
}

/** Hears whether parts are missing, whenever that changes. Answers what ends it. */
export function onMissing(listener: Listener): () => void {
  listeners.add(listener);
  listener(missing.size > 0);
  return () => void listeners.delete(listener);
}

function tell(): void {
  for (const listener of listeners) listener(missing.size > 0);
}

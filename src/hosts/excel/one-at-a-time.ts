/**
 * The same work, but never twice at once: what is asked for while it runs is done once more after it. So a burst of
 * twelve entries into a row is read twice, not twelve times.
 */
export function oneAtATime(work: () => Promise<void>): () => Promise<void> {
  let running: Promise<void> | null = null;
  let again = false;
  return () => {
    if (running) again = true;
    running ??= (async () => {
      do {
        again = false;
        await work();
      } while (again);
    })().finally(() => {
      running = null;
    });
    return running;
  };
}

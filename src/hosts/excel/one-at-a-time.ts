/**
 * The same work, but never twice at once: what is asked for while it runs is done once more after it. So a burst of
 * twelve entries into a row is read twice, not twelve times.
 */
export function oneAtATime(work: () => Promise<void>): () => Promise<void> {
  let running = Promise.resolve();
  let busy = false;
  let again = false;
  const run = async () => {
    try {
      do {
        again = false;
        await work();
      } while (again);
    } finally {
      // In the same breath as the last look at `again`: whoever asks later finds nothing running.
      busy = false;
    }
  };
  return () => {
    if (busy) again = true;
    else {
      busy = true;
      running = run();
    }
    return running;
  };
}

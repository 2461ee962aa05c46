/** Milliseconds to wait where the browser cannot say that it is idle. */
const WAIT = 3000;

/** Does something once, when the page has nothing else to do. Answers what takes that back. */
export function whenIdle(work: () => void): () => void {
  if (typeof requestIdleCallback === "function") {
    const waiting = requestIdleCallback(() => work());
    return () => cancelIdleCallback(waiting);
  }
  const timer = setTimeout(work, WAIT);
  return () => clearTimeout(timer);
}

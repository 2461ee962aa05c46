import { useEffect } from "preact/hooks";

/** Milliseconds to wait where the browser cannot say that it is idle. */
const WAIT = 3000;

/** Does something once, when the page has nothing else to do and is ready for it. */
export function useWhenIdle(work: () => void, ready: boolean): void {
  useEffect(() => {
    if (!ready) return;
    if (typeof requestIdleCallback === "function") {
      const waiting = requestIdleCallback(() => work());
      return () => cancelIdleCallback(waiting);
    }
    const timer = setTimeout(work, WAIT);
    return () => clearTimeout(timer);
  }, [work, ready]);
}

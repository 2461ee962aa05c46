import type { Outcome } from "../../outcome/problem.ts";
import { unavailable } from "../../outcome/problem.ts";

const PREFIX = "bay-and-bench:";

/** Where the browser keeps texts, or nothing where it forbids that. */
export type TextStore = Pick<Storage, "getItem" | "setItem" | "removeItem"> | null;

/** Texts kept in the browser under a key; where the browser keeps none, until the page is closed. */
export function textKeeper(store: TextStore) {
  const fallback = new Map<string, string>();
  return {
    async recall(key: string): Promise<Outcome<string | null>> {
      return fallback.get(key) ?? attempt(() => store?.getItem(PREFIX + key) ?? null, null);
    },
    async keep(key: string, text: string | null): Promise<Outcome<true>> {
      fallback.delete(key);
      const kept = attempt(() => {
        if (text === null) store?.removeItem(PREFIX + key);
        else store?.setItem(PREFIX + key, text);
        return store !== null;
      }, false);
      if (kept || text === null) return true;
      fallback.set(key, text);
      return unavailable(
        "This browser keeps nothing for the page; the text is gone when the page is closed.",
      );
    },
  };
}

/** Storage throws where it is full or forbidden. */
function attempt<T>(action: () => T, otherwise: T): T {
  try {
    return action();
  } catch {
    return otherwise;
  }
}

import { useEffect, useReducer, useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { demoDraft } from "./demo-draft.ts";
import { type Desk, reduceDesk } from "./desk.ts";
import { nothingKept } from "./draft.ts";
import { keepAll, recallKept } from "./keeping.ts";
import { today } from "./today.ts";

/** How long the pane waits for the next change before it keeps what there is, milliseconds. */
const PAUSE = 400;

/** The desk of this workbook: fetched once, kept after each change. */
export function useDesk(host: Host, demo: boolean) {
  const [desk, dispatch] = useReducer(
    reduceDesk,
    null,
    (): Desk => ({ kept: nothingKept(today()), past: [] }),
  );
  const [ready, setReady] = useState(false);
  useEffect(() => {
    let here = true;
    recallKept(host)
      .catch(() => null)
      .then((kept) => {
        if (!here) return;
        const first = demo ? { ...nothingKept(), drafts: [demoDraft("1")] } : null;
        const found = kept ?? first;
        if (found) dispatch({ does: "restored", kept: found });
        setReady(true);
      });
    return () => {
      here = false;
    };
  }, [host, demo]);
  useEffect(() => {
    if (!ready) return;
    const timer = setTimeout(() => void keepAll(host, desk.kept), PAUSE);
    return () => clearTimeout(timer);
  }, [host, ready, desk.kept]);
  return { desk, dispatch, ready };
}

import { useCallback, useEffect, useReducer, useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { demoDraft } from "./demo-draft.ts";
import { type Desk, type DeskAction, reduceDesk } from "./desk.ts";
import { nothingKept } from "./draft.ts";
import { keepAll, recallKept } from "./keeping.ts";
import { LONG_TEXT } from "./long-text.ts";
import { today } from "./today.ts";

/** How long the pane waits for the next change before it keeps what there is, milliseconds. */
const PAUSE = 400;

/** A table too long for the desk: a text that came in one of the usual ways, or a file. */
type LongSource = string | Blob | null;

/** The desk of this workbook: fetched once, kept after each change. Texts that are too long for it stay beside it. */
export function useDesk(host: Host, demo: boolean) {
  const [desk, dispatch] = useReducer(
    reduceDesk,
    null,
    (): Desk => ({ kept: nothingKept(today()), past: [] }),
  );
  const [ready, setReady] = useState(false);
  const [long, setLong] = useState<LongSource>(null);
  // The same from drawing to drawing: a table is followed anew when it changes, and views are drawn again.
  const take = useCallback(
    (action: DeskAction) =>
      "text" in action && action.text.length > LONG_TEXT ? setLong(action.text) : dispatch(action),
    [],
  );
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
  return { desk, dispatch, take, ready, long, setLong };
}

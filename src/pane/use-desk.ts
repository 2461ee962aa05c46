import { useCallback, useEffect, useLayoutEffect, useMemo, useReducer, useRef, useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { isProblem, type Problem } from "../outcome/problem.ts";
import { demoDraft } from "./demo-draft.ts";
import { type Desk, type DeskAction, reduceDesk } from "./desk.ts";
import { type Kept, nothingKept, openDraft } from "./draft.ts";
import { keeper } from "./keeper.ts";
import { recallKept, setAside } from "./keeping.ts";
import { LONG_TEXT } from "./long-text.ts";
import { freeId } from "./session-name.ts";
import { today } from "./today.ts";
import { usualUnits } from "./usual-units.ts";

/** A table too long for the desk: a text that came in one of the usual ways, or a file; null where none is read. */
type LongSource = string | Blob | null;

/** The desk of this workbook: fetched once, kept after each change. Texts that are too long for it stay beside it. */
export function useDesk(host: Host, demo: boolean) {
  const [desk, dispatch] = useReducer(
    reduceDesk,
    null,
    (): Desk => ({ kept: nothingKept(today(), usualUnits()), past: [] }),
  );
  const [ready, setReady] = useState(false);
  const [long, setLong] = useState<LongSource>(null);
  /** Why what was kept cannot be read; while that stands nothing is kept, so that nothing is written over it. */
  const [unread, setUnread] = useState<Problem | null>(null);
  const [unkept, setUnkept] = useState<Problem | null>(null);
  const keeping = useMemo(() => keeper(host, setUnkept), [host]);
  const current = useRef(desk);
  current.current = desk;
  // The same from drawing to drawing: a table is followed anew when it changes, and views are drawn again.
  const take = useCallback(
    (action: DeskAction) =>
      "text" in action && action.text.length > LONG_TEXT ? setLong(action.text) : dispatch(action),
    [],
  );
  const fetchKept = useCallback(async () => {
    const found = await recallKept(host);
    if (isProblem(found)) {
      keeping.holds(current.current.kept);
      return setUnread(found);
    }
    setUnread(null);
    const { kept: work, past } = current.current;
    const first = demo && past.length === 0 ? { ...work, drafts: [demoDraft("1")] } : work;
    keeping.holds(found ?? first);
    dispatch({ does: "restored", kept: found ? withWork(found, current.current) : first });
  }, [host, demo, keeping]);
  useEffect(() => {
    let here = true;
    void fetchKept().then(() => here && setReady(true));
    return () => {
      here = false;
    };
  }, [fetchKept]);
  // Before the screen is painted: the page may go right after the change, and then it must be known.
  useLayoutEffect(() => {
    if (ready && !unread) keeping.changed(desk.kept);
  }, [keeping, ready, unread, desk.kept]);
  useEffect(() => {
    const hidden = () => document.visibilityState === "hidden" && keeping.flush();
    addEventListener("pagehide", keeping.flush);
    document.addEventListener("visibilitychange", hidden);
    return () => {
      removeEventListener("pagehide", keeping.flush);
      document.removeEventListener("visibilitychange", hidden);
    };
  }, [keeping]);
  const putAside = async () => {
    const put = await setAside(host);
    setUnread(isProblem(put) ? put : null);
  };
  const keptTrouble = { unread, unkept, tryAgain: fetchKept, putAside };
  return { desk, dispatch, take, ready, long, setLong, keptTrouble };
}

/** What was kept, with what was done on the desk before it could be fetched as a session of its own. */
function withWork(kept: Kept, { kept: work, past }: Desk): Kept {
  if (past.length === 0) return kept;
  const draft = { ...openDraft(work), id: freeId(kept) };
  return { ...kept, open: draft.id, drafts: [...kept.drafts, draft] };
}

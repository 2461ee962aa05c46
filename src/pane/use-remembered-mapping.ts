import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { recallMapping, rememberMapping } from "../hosts/remember-mapping.ts";
import { isProblem, type Problem } from "../outcome/problem.ts";
import { headerSignature } from "../shots/header-signature.ts";
import { correctionsOf } from "./corrections-of.ts";
import type { DeskAction } from "./desk.ts";
import type { Draft } from "./draft.ts";
import { type Corrected, mappingToRemember } from "./mapping-to-remember.ts";

/**
 * What was once put right about the columns of a table is put right in the next one with the same headings. A
 * session in which something was put right already stays as it is. Answers why the latest could not be remembered.
 */
export function useRememberedMapping(
  host: Host,
  draft: Draft,
  dispatch: (action: DeskAction) => void,
): Problem | null {
  const [unremembered, setUnremembered] = useState<Problem | null>(null);
  const signature = useMemo(() => headerSignature(draft.text), [draft.text]);
  const { id, corrections } = draft;
  const before = useRef<Corrected | null>(null);
  // Not upon every change of corrections: one that was undone must not come back at once.
  useEffect(() => {
    if (signature === "" || Object.keys(corrections).length > 0) return;
    let here = true;
    void recallMapping(host, signature).then((mapping) => {
      if (!here || mapping === null) return;
      dispatch({ does: "recalled", corrections: correctionsOf(mapping) });
    });
    return () => {
      here = false;
    };
  }, [host, id, signature]);
  useEffect(() => {
    const now = { id, signature, corrections };
    const mapping = mappingToRemember(before.current, now);
    before.current = now;
    if (!mapping) return;
    void rememberMapping(host, signature, mapping).then((done) =>
      setUnremembered(isProblem(done) ? done : null),
    );
  }, [host, id, signature, corrections]);
  return unremembered;
}

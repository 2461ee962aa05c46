import { useEffect, useMemo } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { recallMapping, rememberMapping } from "../hosts/remember-mapping.ts";
import { headerSignature } from "../shots/header-signature.ts";
import { correctionsOf } from "./corrections-of.ts";
import type { DeskAction } from "./desk.ts";
import type { Draft } from "./draft.ts";
import { readOptions } from "./reading-options.ts";

/**
 * What was once put right about the columns of a table is put right in the next one with the same headings. A
 * session in which something was put right already stays as it is.
 */
export function useRememberedMapping(host: Host, draft: Draft, dispatch: (action: DeskAction) => void): void {
  const signature = useMemo(() => headerSignature(draft.text), [draft.text]);
  const { id, corrections } = draft;
  const untouched = Object.keys(corrections).length === 0;
  // Not upon every change of corrections: one that was undone must not come back at once.
  useEffect(() => {
    if (signature === "" || !untouched) return;
    let here = true;
    void recallMapping(host, signature).then((mapping) => {
      if (!here || mapping === null) return;
      for (const [column, correction] of Object.entries(correctionsOf(mapping))) {
        dispatch({ does: "correct", column: Number(column), correction });
      }
    });
    return () => {
      here = false;
    };
  }, [host, id, signature]);
  useEffect(() => {
    if (signature === "" || untouched) return;
    const { columns = {}, units = {} } = readOptions(corrections, false);
    void rememberMapping(host, signature, { columns, units });
  }, [host, signature, corrections, untouched]);
}

import { useRef, useState } from "preact/hooks";
import type { Session } from "../fitting/session.ts";
import type { Host } from "../hosts/host.ts";
import { isProblem } from "../outcome/problem.ts";
import { moment } from "./today.ts";

/** How far the writing of sheets is. */
export type Making =
  | { readonly is: "idle" }
  | { readonly is: "working"; readonly share: number }
  | { readonly is: "done"; readonly sheets: readonly string[]; readonly notes: readonly string[] }
  | { readonly is: "failed"; readonly message: string };

/** What takes less than this is not worth a bar that flashes up, milliseconds. */
const PATIENCE = 500;

/** Writes the comparison sheets through the host, tells how far it is, and stops when told to. */
export function useMaking(host: Host) {
  const [making, setMaking] = useState<Making>({ is: "idle" });
  const [slow, setSlow] = useState(false);
  const stop = useRef<AbortController | null>(null);
  const make = async (session: Session) => {
    const controller = new AbortController();
    stop.current = controller;
    setMaking({ is: "working", share: 0 });
    const timer = setTimeout(() => setSlow(true), PATIENCE);
    const progress = (share: number) => setMaking({ is: "working", share });
    const ended = await carryOut(host, session, controller.signal, progress);
    clearTimeout(timer);
    setSlow(false);
    setMaking(ended);
    stop.current = null;
  };
  return { making, slow, make, cancel: () => stop.current?.abort() };
}

async function carryOut(
  host: Host,
  session: Session,
  signal: AbortSignal,
  progress: (share: number) => void,
): Promise<Making> {
  try {
    const taken = await host.taken();
    if (isProblem(taken)) return { is: "failed", message: taken.message };
    const { comparisonWorkbook } = await import("./analysis.ts");
    const written = await host.write(comparisonWorkbook(session, taken, moment()), { signal, progress });
    if (isProblem(written)) return { is: "failed", message: written.message };
    return { is: "done", ...written };
  } catch (error) {
    // A host answers problems; this is for one that breaks its promise, so that the button comes back.
    const message = error instanceof Error ? error.message : String(error);
    return { is: "failed", message: `The sheets could not be written: ${message}` };
  }
}

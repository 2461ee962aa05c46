import { useRef, useState } from "preact/hooks";
import type { Session } from "../fitting/session.ts";
import type { Host } from "../hosts/host.ts";
import { isProblem } from "../outcome/problem.ts";
import { comparisonWorkbook } from "../sheets/comparison-workbook.ts";
import { moment } from "./today.ts";

/** How far the writing of sheets is. */
export type Making =
  | { readonly is: "idle" }
  | { readonly is: "working"; readonly share: number }
  | { readonly is: "done"; readonly sheets: readonly string[]; readonly notes: readonly string[] }
  | { readonly is: "failed"; readonly message: string };

/** Writes the comparison sheets through the host, tells how far it is, and stops when told to. */
export function useMaking(host: Host) {
  const [making, setMaking] = useState<Making>({ is: "idle" });
  const stop = useRef<AbortController | null>(null);
  const make = async (session: Session) => {
    const controller = new AbortController();
    stop.current = controller;
    setMaking({ is: "working", share: 0 });
    setMaking(
      await carryOut(host, session, controller.signal, (share) => setMaking({ is: "working", share })),
    );
    stop.current = null;
  };
  return { making, make, cancel: () => stop.current?.abort() };
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
    const written = await host.write(comparisonWorkbook(session, taken, moment()), { signal, progress });
    if (isProblem(written)) return { is: "failed", message: written.message };
    return { is: "done", ...written };
  } catch (error) {
    // A host answers problems; this is for a host that breaks that promise, so that the button comes back.
    const message = error instanceof Error ? error.message : String(error);
    return { is: "failed", message: `${host.name} could not write the sheets: ${message}` };
  }
}

import { useMemo, useRef, useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { isProblem, type Outcome } from "../outcome/problem.ts";
import type { Taken } from "../sheets/free-names.ts";
import type { WorkbookPlan } from "../sheets/plan.ts";
import { moment } from "./today.ts";

/** How far the writing of sheets is. */
export type Making =
  | { readonly is: "idle" }
  | { readonly is: "working"; readonly share: number }
  | { readonly is: "done"; readonly sheets: readonly string[]; readonly notes: readonly string[] }
  | { readonly is: "failed"; readonly message: string };

/** Draws up sheets whose names are free, at a moment; what draws them up may have to be fetched first. */
export type Planner = (taken: Taken, made: string) => Promise<Outcome<WorkbookPlan>>;

/** What writes sheets, and how far it is. One for the whole pane: sheets are written one after the other. */
export interface Maker {
  readonly making: Making;
  /** Whether it takes long enough for a bar. */
  readonly slow: boolean;
  readonly make: (planner: Planner) => Promise<void>;
  readonly cancel: () => void;
}

/** What takes less than this is not worth a bar that flashes up, milliseconds. */
const PATIENCE = 500;

/** Writes sheets through the host, tells how far it is, and stops when told to. */
export function useMaking(host: Host): Maker {
  const [making, setMaking] = useState<Making>({ is: "idle" });
  const [slow, setSlow] = useState(false);
  const stop = useRef<AbortController | null>(null);
  // The same while nothing has changed, so that views which only hand it on are not drawn anew.
  return useMemo(() => {
    const make = async (planner: Planner) => {
      if (stop.current) return;
      const controller = new AbortController();
      stop.current = controller;
      setMaking({ is: "working", share: 0 });
      const timer = setTimeout(() => setSlow(true), PATIENCE);
      const progress = (share: number) => setMaking({ is: "working", share });
      const ended = await carryOut(host, planner, controller.signal, progress);
      clearTimeout(timer);
      setSlow(false);
      setMaking(ended);
      stop.current = null;
    };
    return { making, slow, make, cancel: () => stop.current?.abort() };
  }, [host, making, slow]);
}

async function carryOut(
  host: Host,
  planner: Planner,
  signal: AbortSignal,
  progress: (share: number) => void,
): Promise<Making> {
  try {
    const taken = await host.taken();
    if (isProblem(taken)) return { is: "failed", message: taken.message };
    const plan = await planner(taken, moment());
    if (isProblem(plan)) return { is: "failed", message: plan.message };
    const written = await host.write(plan, { signal, progress });
    if (isProblem(written)) return { is: "failed", message: written.message };
    return { is: "done", ...written };
  } catch (error) {
    // A host answers problems; this is for one that breaks its promise, so that the button comes back.
    const message = error instanceof Error ? error.message : String(error);
    return { is: "failed", message: `The sheets could not be written: ${message}` };
  }
}

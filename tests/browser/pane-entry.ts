import { mountPane } from "../../src/pane/mount.tsx";
import { memoryHost } from "../pane/memory-host.ts";

/** What a test may set before the pane's script runs, and read afterwards. */
export interface PaneTest {
  readonly demo?: boolean;
  /** Texts the host kept earlier. */
  readonly kept?: Readonly<Record<string, string>>;
  /** How long a write takes, milliseconds. */
  readonly slow?: number;
  /** What the host says instead of writing. */
  readonly refuses?: string;
  /** What the host says instead of keeping, and instead of handing out what was kept. */
  readonly keepRefuses?: string;
  readonly recallRefuses?: string;
  /** The one key that it refuses to keep; left out: it refuses all. */
  readonly keepRefusesKey?: string;
  /** What the host says when it is asked for its tables; told once. */
  readonly tablesRefuse?: string;
  /** Whether the host can follow a table. */
  readonly follows?: boolean;
  host?: ReturnType<typeof memoryHost>;
}

declare global {
  var paneTest: PaneTest;
}

const {
  demo = false,
  kept = {},
  slow = 0,
  refuses,
  keepRefuses,
  keepRefusesKey,
  recallRefuses,
  tablesRefuse,
  follows,
} = globalThis.paneTest ?? {};
const memory = memoryHost();
for (const [key, text] of Object.entries(kept)) memory.texts.set(key, text);
globalThis.paneTest = { host: memory };

let refusals = 1;
const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

mountPane(
  document.querySelector<HTMLElement>("#pane")!,
  {
    ...memory,
    ...(follows ? { follow: async () => async () => {} } : {}),
    keep: async (key, text) =>
      keepRefuses && (keepRefusesKey ?? key) === key
        ? { kind: "unavailable", message: keepRefuses }
        : memory.keep(key, text),
    recall: async (key) =>
      recallRefuses ? { kind: "unavailable", message: recallRefuses } : memory.recall(key),
    tables: async () => {
      if (refusals-- > 0 && tablesRefuse) return { kind: "unavailable", message: tablesRefuse };
      return memory.tables();
    },
    write: async (plan, run) => {
      for (let step = 1; step <= 10; step++) {
        if (slow > 0) await pause(slow / 10);
        if (run?.signal?.aborted)
          return { kind: "unavailable", message: "Stopped; the workbook is as it was." };
        run?.progress?.(step / 10);
      }
      return refuses ? { kind: "unavailable", message: refuses } : memory.write(plan, run);
    },
  },
  { demo },
);

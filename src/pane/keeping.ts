import type { Host } from "../hosts/host.ts";
import { UNIT_SETS } from "../shots/unit-set.ts";
import { type Draft, emptyDraft, type Kept } from "./draft.ts";

const KEY = "bench-sessions";

/** What was kept in this workbook, or null where nothing was or it cannot be understood. */
export async function recallKept(host: Host): Promise<Kept | null> {
  const text = await host.recall(KEY);
  return text === null ? null : parseKept(text);
}

/** Keeps all sessions with the workbook. */
export function keepAll(host: Host, kept: Kept) {
  return host.keep(KEY, JSON.stringify(kept));
}

/** Reads what was kept, leaving out whatever has not the shape it should have. */
export function parseKept(text: string): Kept | null {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isRecord(found) || found.version !== 1 || !Array.isArray(found.drafts)) return null;
  const drafts = found.drafts.flatMap(toDraft);
  if (drafts.length === 0) return null;
  const open = drafts.find((draft) => draft.id === found.open) ?? drafts[0]!;
  return { version: 1, units: UNIT_SETS.find((one) => one === found.units) ?? "us", open: open.id, drafts };
}

function toDraft(found: unknown): Draft[] {
  if (!isRecord(found) || typeof found.id !== "string" || typeof found.text !== "string") return [];
  const empty = emptyDraft(found.id);
  const part = <K extends keyof Draft>(key: K) => (isRecord(found[key]) ? found[key] : {}) as Draft[K];
  return [
    {
      id: found.id,
      text: found.text,
      corrections: part("corrections"),
      facts: { ...empty.facts, ...part("facts") },
      builds: part("builds"),
      ticks: part("ticks"),
      bench: { ...empty.bench, ...part("bench") },
      plan: { ...empty.plan, ...part("plan") },
      ...inLedger(found.ledger),
    },
  ];
}

function inLedger(found: unknown): Pick<Draft, "ledger"> {
  if (!isRecord(found) || typeof found.session !== "string" || found.session === "") return {};
  const { session, shots, ordered } = found;
  return {
    ledger: {
      session,
      shots: typeof shots === "number" ? shots : 0,
      ordered: typeof ordered === "string" ? ordered : "",
    },
  };
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

import type { Host } from "../hosts/host.ts";
import { isRecord } from "../hosts/is-record.ts";
import { invalid, isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { UNIT_SETS } from "../shots/unit-set.ts";
import { type Draft, emptyDraft, type Kept } from "./draft.ts";

const KEY = "bench-sessions";
const ASIDE = "bench-sessions-aside";

/** What was kept in this workbook; null where nothing was; a problem where it cannot be read, so that it stays. */
export async function recallKept(host: Host): Promise<Outcome<Kept | null>> {
  const text = await host.recall(KEY).catch((error) => unavailable(String(error)));
  if (isProblem(text)) {
    return unavailable(`What was kept here could not be fetched: ${text.message}`);
  }
  return text === null ? null : parseKept(text);
}

/** Keeps all sessions with the workbook, with what could not be read of an earlier keeping. */
export function keepAll(host: Host, { unread, ...kept }: Kept): Promise<Outcome<true>> {
  return host.keep(KEY, JSON.stringify({ ...kept, drafts: [...kept.drafts, ...(unread ?? [])] }));
}

/** Puts what was kept and cannot be read under another key, where it stays with the workbook. */
export async function setAside(host: Host): Promise<Outcome<true>> {
  const text = await host.recall(KEY);
  if (isProblem(text)) return text;
  const kept = await host.keep(ASIDE, text);
  return isProblem(kept) ? kept : host.keep(KEY, null);
}

/**
 * Reads what was kept. Single sessions that have not the shape they should have are carried along unread; a problem
 * where none has it, or where a later version of this program wrote them.
 */
export function parseKept(text: string): Outcome<Kept> {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    return NOT_OURS;
  }
  if (!isRecord(found) || !Array.isArray(found.drafts)) return NOT_OURS;
  if (found.version !== 1) return NEWER;
  const read = found.drafts.map((one) => ({ one, draft: toDraft(one) }));
  const drafts = read.flatMap(({ draft }) => draft ?? []);
  const unread = read.flatMap(({ one, draft }) => (draft ? [] : [one]));
  if (drafts.length === 0) return NOT_OURS;
  const open = drafts.find((draft) => draft.id === found.open) ?? drafts[0]!;
  const units = UNIT_SETS.find((one) => one === found.units) ?? "us";
  return { version: 1, units, open: open.id, drafts, ...(unread.length > 0 ? { unread } : {}) };
}

const NOT_OURS = invalid("The sessions that were kept here cannot be read: they are damaged.");
const NEWER = invalid(
  "The sessions that were kept here cannot be read: a later version of this pane wrote them.",
);

function toDraft(found: unknown): Draft | null {
  if (!isRecord(found) || typeof found.id !== "string" || typeof found.text !== "string") return null;
  const empty = emptyDraft(found.id);
  const part = <K extends keyof Draft>(key: K) => (isRecord(found[key]) ? found[key] : {}) as Draft[K];
  return {
    id: found.id,
    text: found.text,
    corrections: part("corrections"),
    facts: { ...empty.facts, ...part("facts") },
    builds: part("builds"),
    ticks: part("ticks"),
    bench: { ...empty.bench, ...part("bench") },
    plan: { ...empty.plan, ...part("plan") },
    ...inLedger(found.ledger),
  };
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

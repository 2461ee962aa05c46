import type { Draft, Kept } from "./draft.ts";

/** What a session is called in the list of sessions: by its player and day, as far as they are known. */
export function sessionName({ id, facts }: Draft): string {
  return [facts.player || `Session ${id}`, facts.date].filter(Boolean).join(", ");
}

/** An id that no session has. */
export function freeId({ drafts }: Kept): string {
  return String(1 + Math.max(0, ...drafts.map(({ id }) => Number(id) || 0)));
}

import { emptyDraft, type Kept, openDraft } from "./draft.ts";
import { freeId } from "./session-name.ts";

/**
 * What is kept once cells were brought from the sheet: they become the open session where it has no shots yet or
 * these very ones, and otherwise a session of its own, so that nothing that is on the desk goes.
 */
export function withCells(kept: Kept, text: string, date: string): Kept {
  const open = openDraft(kept);
  if (open.text === text) return kept;
  if (open.text.trim() === "") {
    return { ...kept, drafts: kept.drafts.map((draft) => (draft === open ? { ...draft, text } : draft)) };
  }
  const known = kept.drafts.find((draft) => draft.text === text);
  if (known) return { ...kept, open: known.id };
  const draft = { ...emptyDraft(freeId(kept), date), text };
  return { ...kept, open: draft.id, drafts: [...kept.drafts, draft] };
}

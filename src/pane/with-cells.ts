import { type Draft, emptyDraft, type Kept, openDraft } from "./draft.ts";
import { freeId } from "./session-name.ts";

/**
 * What is kept once cells were brought from the sheet: they become the open session where it has no shots yet, the
 * session that has these very ones, or else a session of its own, so that nothing that is on the desk goes.
 * `corrections`: what is remembered of tables with these headings.
 */
export function withCells(
  kept: Kept,
  text: string,
  date: string,
  corrections: Draft["corrections"] = {},
): Kept {
  const known = [openDraft(kept), ...kept.drafts].find((draft) => draft.text === text);
  if (known) return { ...kept, open: known.id };
  const open = openDraft(kept);
  if (open.text.trim() === "") {
    const filled = { ...open, text, corrections };
    return { ...kept, drafts: kept.drafts.map((draft) => (draft === open ? filled : draft)) };
  }
  const draft = { ...emptyDraft(freeId(kept), date), text, corrections };
  return { ...kept, open: draft.id, drafts: [...kept.drafts, draft] };
}

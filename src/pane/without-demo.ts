import { DEMO_TEXT } from "../fitting/demo.ts";
import { demoDraft } from "./demo-draft.ts";
import { type Draft, emptyDraft, type Facts } from "./draft.ts";
import { goesOn } from "./goes-on.ts";

/**
 * A session as a table that is not the demo's finds it: with what the demo brought taken out, for the next player's
 * shots would be told and printed under the invented one's name. A session without the demo answers as it is. The demo
 * is known by its shots, so one that was kept and opened again is known too.
 *
 * A fact that still says what the demo said goes. One that says something else was told by hand, before the shots were
 * there, and stays. The baseline, what was told of builds and what is on the bench speak of the demo's clubs, whoever
 * told it, and go.
 *
 * @param date the day of the session from then on, `yyyy-mm-dd`, unless another was told by hand
 */
export function withoutDemo(draft: Draft, date = ""): Draft {
  if (!goesOn(DEMO_TEXT, draft.text)) return draft;
  const demo = demoDraft(draft.id).facts;
  const { facts, builds, bench } = emptyDraft(draft.id, date);
  const told = Object.entries(draft.facts).filter(([key, fact]) => fact !== demo[key as keyof Facts]);
  return { ...draft, facts: { ...facts, ...Object.fromEntries(told), baseline: "" }, builds, bench };
}

import { DEMO_FACTS, DEMO_TEXT } from "../fitting/demo.ts";
import { type Draft, emptyDraft } from "./draft.ts";

/** The invented session of the Harrow Lane workshop, as if a fitter had brought it. */
export function demoDraft(id: string): Draft {
  const empty = emptyDraft(id);
  const { builds = [], title, player, date, place, leftHanded, goal, baseline } = DEMO_FACTS;
  const told = { title, player, date, place, leftHanded, goal, baseline };
  const known = Object.fromEntries(Object.entries(told).filter(([, value]) => value !== undefined));
  return {
    ...empty,
    text: DEMO_TEXT,
    facts: { ...empty.facts, ...known },
    builds: Object.fromEntries(builds.map((build) => [build.name, build])),
  };
}

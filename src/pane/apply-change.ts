import { DEMO_TEXT } from "../fitting/demo.ts";
import { calledNow } from "./called-now.ts";
import type { Change } from "./change.ts";
import { type Draft, emptyDraft, type Kept, openDraft } from "./draft.ts";
import { goesOn } from "./goes-on.ts";
import { withoutDemo } from "./without-demo.ts";

/** What is kept after a change. Answers the same object where nothing changed. */
export function applyChange(kept: Kept, change: Change): Kept {
  switch (change.does) {
    case "units":
      return { ...kept, units: change.units };
    case "new":
      return { ...kept, open: change.draft.id, drafts: [...kept.drafts, change.draft] };
    case "open":
      return kept.drafts.some((draft) => draft.id === change.id) ? { ...kept, open: change.id } : kept;
    case "forget":
      return forget(kept, change.id);
    case "inLedger": {
      const drafts = kept.drafts.map((draft) =>
        draft.id === change.id && goesOn(draft.text, change.text)
          ? { ...draft, ledger: change.ledger }
          : draft,
      );
      return { ...kept, drafts };
    }
    default: {
      const before = openDraft(kept);
      const after = changeDraft(before, change);
      if (after === before) return kept;
      return { ...kept, drafts: kept.drafts.map((draft) => (draft === before ? after : draft)) };
    }
  }
}

type DraftChange = Exclude<Change, { does: "units" | "new" | "open" | "forget" | "inLedger" }>;

function changeDraft(draft: Draft, change: DraftChange): Draft {
  switch (change.does) {
    case "text": {
      if (change.text === draft.text) return draft;
      const holder = goesOn(DEMO_TEXT, change.text) ? draft : withoutDemo(draft, change.date);
      return withText(holder, change.text, change.ticks);
    }
    case "add":
      return change.text.trim() === "" ? draft : { ...draft, text: joined(draft.text, change.text) };
    case "correct": {
      const column = String(change.column);
      const correction = { ...draft.corrections[column], ...change.correction };
      return { ...draft, corrections: { ...draft.corrections, [column]: correction } };
    }
    case "recalled":
      return { ...draft, corrections: { ...draft.corrections, ...change.corrections } };
    case "facts":
      return { ...draft, facts: { ...draft.facts, ...change.facts } };
    case "build": {
      const before = calledNow(change.name, draft.builds);
      const details = { ...draft.builds[change.name], ...change.details };
      const builds = { ...draft.builds, [change.name]: details };
      // The build on the bench is known by what it is called; under a new name it is still the one that was chosen.
      const { bench } = draft;
      const renamed = bench.chosen === before ? { ...bench, chosen: calledNow(change.name, builds) } : bench;
      return { ...draft, builds, bench: renamed };
    }
    case "bench":
      return { ...draft, bench: { ...draft.bench, ...change.bench } };
    case "plan":
      return { ...draft, plan: { ...draft.plan, ...change.plan } };
    case "tick": {
      const ticks = { ...draft.ticks };
      for (const row of change.rows) ticks[row] = change.keep;
      return { ...draft, ticks };
    }
    case "replace":
      return { ...change.draft, id: draft.id };
  }
}

/** Ticks and corrections name rows and columns of the text: those stay whose line is still what it was. */
function withText(draft: Draft, text: string, given?: Draft["ticks"]): Draft {
  const before = draft.text.split(/\r?\n/);
  const after = text.split(/\r?\n/);
  const { ledger, ...rest } = draft;
  const ticks = Object.entries(draft.ticks).filter(([row]) => before[+row - 1] === after[+row - 1]);
  return {
    ...rest,
    ...(ledger && goesOn(draft.text, text) ? { ledger } : {}),
    text,
    ticks: given ?? Object.fromEntries(ticks),
    corrections: before[0] === after[0] ? draft.corrections : {},
  };
}

function joined(text: string, more: string): string {
  return text === "" || text.endsWith("\n") ? text + more : `${text}\n${more}`;
}

function forget(kept: Kept, id: string): Kept {
  const drafts = kept.drafts.filter((draft) => draft.id !== id);
  if (drafts.length === kept.drafts.length) return kept;
  if (drafts.length === 0) return { ...kept, open: id, drafts: [emptyDraft(id)] };
  return { ...kept, drafts, open: kept.open === id ? drafts[drafts.length - 1]!.id : kept.open };
}

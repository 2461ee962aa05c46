import type { Host, Written } from "../hosts/host.ts";
import { recallMapping } from "../hosts/remember-mapping.ts";
import { isProblem, type Outcome, type Problem, unavailable } from "../outcome/problem.ts";
import { headerSignature } from "../shots/header-signature.ts";
import { correctionsOf } from "./corrections-of.ts";
import { type Derived, derive } from "./derive.ts";
import { type Kept, nothingKept, openDraft } from "./draft.ts";
import { fetchFilling } from "./fetch-parts.ts";
import { figuresFor } from "./figures.ts";
import { keepAll, recallKept } from "./keeping.ts";
import { LONG_TEXT } from "./long-text.ts";
import { moment, today } from "./today.ts";
import { usualUnits } from "./usual-units.ts";
import { withCells } from "./with-cells.ts";
import { writeSheets } from "./write-sheets.ts";
import { writtenWords } from "./written-words.ts";

/** What the commands need of the pane around them. */
export interface PaneAround {
  readonly host: Host;
  /** Says a sentence where the pane's user sees it. */
  readonly say: (sentence: string) => void;
  /** Shows the pane anew from what is kept. */
  readonly reopen: () => void;
  /** Resolves when the pane has kept the last change that was made in it. */
  readonly settled: () => Promise<void>;
}

/**
 * What the ribbon's buttons and the context menu do. They work on what is kept with the workbook, so they do the
 * same whether the pane was open or not; whatever comes of it is said in the pane.
 */
export function paneCommands({ host, say, reopen, settled }: PaneAround) {
  const recall = async (): Promise<Outcome<Kept>> => {
    await settled();
    return (await recallKept(host)) ?? nothingKept(today(), usualUnits());
  };
  const run = { progress: progressWords(say) };
  // One after the other: a second press while sheets are written would bring the same ones twice.
  let working = false;
  const alone = (work: () => Promise<void>) => async () => {
    if (working) return say("Still at work on what was asked before.");
    working = true;
    try {
      await work();
    } finally {
      working = false;
    }
  };
  return {
    compareSelection: alone(async () => {
      say("Reading the selected cells…");
      const text = await host.selection();
      if (isProblem(text)) return say(text.message);
      if (text.length > LONG_TEXT) return say(TOO_LONG);
      const mapping = await recallMapping(host, headerSignature(text));
      const before = await recall();
      if (isProblem(before)) return say(before.message);
      const kept = withCells(before, text, today(), mapping ? correctionsOf(mapping) : {});
      const held = await keepAll(host, kept);
      reopen();
      const known = await derivedFrom(kept);
      if (isProblem(known)) return say(known.message);
      say(WRITING);
      const { comparisonWorkbook } = await import("../sheets/comparison-workbook.ts");
      const written = await writeSheets(
        host,
        (taken) => comparisonWorkbook(known.session, taken, moment()),
        run,
      );
      say(`${sentenceOf(written)}${isProblem(held) ? ` ${held.message}` : ""}`);
    }),
    fillBenchSheet: alone(async () => {
      say("Working the set out…");
      const kept = await recall();
      if (isProblem(kept)) return say(kept.message);
      const known = await derivedFrom(kept);
      if (isProblem(known)) return say(known.message);
      const { benchWorkbook, buildForBench } = await import("./bench-command.ts");
      const chosen = buildForBench(known.session);
      if (isProblem(chosen)) return say(chosen.message);
      const written = await writeSheets(
        host,
        (taken) => benchWorkbook(known.session, chosen.build, null, taken, moment()),
        run,
      );
      const whose = isProblem(written) ? "" : ` It is for "${chosen.build}", ${chosen.why}.`;
      say(`${sentenceOf(written)}${whose}`);
    }),
  };
}

const WRITING = "Writing the sheets…";

/** Says how far a write is in quarters, for each change is read out. */
function progressWords(say: (sentence: string) => void): (share: number) => void {
  let told = 0;
  return (share) => {
    const quarter = Math.floor(4 * share);
    if (quarter !== told && quarter > 0 && quarter < 4) say(`${WRITING} ${25 * quarter} %`);
    told = quarter;
  };
}

const TOO_LONG =
  "This is a long table: open the pane and press “Take the selected cells”, which reads it beside the page.";

async function derivedFrom(kept: Kept): Promise<Derived | Problem> {
  const nothing = unavailable(
    "There are no shots yet: select a table of shots, headings included, and try again.",
  );
  const draft = openDraft(kept);
  const filling = draft.facts.fill ? await fetchFilling() : null;
  return derive(draft, kept.units, filling?.filledSession, figuresFor().decimalMark) ?? nothing;
}

function sentenceOf(written: Outcome<Written>): string {
  if (isProblem(written)) return written.message;
  return writtenWords(written);
}

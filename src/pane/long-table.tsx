import { useEffect, useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { recallMapping } from "../hosts/remember-mapping.ts";
import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { headerSignature } from "../shots/header-signature.ts";
import { correctionsOf } from "./corrections-of.ts";
import type { DeskAction } from "./desk.ts";
import { type Draft, type Kept, openDraft } from "./draft.ts";
import type { Figures } from "./figures.ts";
import { LongFindings } from "./long-findings.tsx";
import { LONG_TEXT } from "./long-text.ts";
import type { LongAnswer, LongStep } from "./long-work.ts";
import { runLong } from "./run-long.ts";
import { textOfSource } from "./text-of-source.ts";
import { today } from "./today.ts";
import { withoutDemo } from "./without-demo.ts";

interface LongTableProps {
  readonly source: string | Blob;
  readonly host: Host;
  readonly kept: Kept;
  readonly figures: Figures;
  /** Changes the desk, whatever the length of the text. */
  readonly dispatch: (action: DeskAction) => void;
  /** What shows sessions; null until they have been fetched. */
  readonly analysis: typeof import("./analysis.ts") | null;
  readonly parts: typeof import("./session-parts.ts") | null;
  /** Puts the long table away. */
  readonly close: () => void;
}

/**
 * A table that is too long for the desk: read beside the page, with what it says as the answer. The table itself is
 * not kept with the workbook, for no workbook's settings hold so much; the open session stays as it is.
 */
export function LongTable(props: LongTableProps) {
  const { source, host, kept, figures, dispatch, analysis, parts, close } = props;
  const [step, setStep] = useState<LongStep | null>(null);
  const [answer, setAnswer] = useState<Outcome<LongAnswer> | null>(null);
  const [corrections, setCorrections] = useState<Draft["corrections"]>({});
  const { facts, builds } = withoutDemo(openDraft(kept), today());
  const { leftHanded, goal, baseline, air, windows } = facts;
  // Who plays and what the session is called changes nothing in the answer.
  const asked = JSON.stringify({ leftHanded, goal, baseline, air, windows, builds, units: kept.units });
  useEffect(() => {
    const controller = new AbortController();
    setAnswer(null);
    setStep(null);
    void (async () => {
      const signature = headerSignature(await textOfSource(source, LONG_TEXT));
      const mapping = await recallMapping(host, signature).catch(() => null);
      if (controller.signal.aborted) return;
      const corrections = mapping ? correctionsOf(mapping) : {};
      setCorrections(corrections);
      const order = { corrections, facts, builds, units: kept.units };
      const found = await runLong(source, order, setStep, controller.signal).catch((error) =>
        unavailable(`The table could not be read: ${error instanceof Error ? error.message : error}.`),
      );
      if (found !== null && !controller.signal.aborted) setAnswer(found);
    })();
    return () => controller.abort();
  }, [source, host, asked]);
  // In tens, for each change is read out.
  const percent = Math.floor(10 * (step?.share ?? 0)) * 10;
  return (
    <section id="long-table" class="body" aria-label="A long table">
      <h3>A long table</h3>
      <p role="status">
        {answer === null
          ? `${step?.doing ?? "Reading the table"}: ${percent} %`
          : isProblem(answer)
            ? ""
            : "The long table has been read."}
      </p>
      {answer === null && <progress aria-label="Done of the long table" value={step?.share ?? 0} max={1} />}
      {isProblem(answer) && (
        <p class="problem" role="alert">
          {answer.message}
        </p>
      )}
      {answer !== null && !isProblem(answer) && analysis && parts && (
        <LongFindings {...{ answer, source, corrections, kept, figures, dispatch, analysis, parts }} />
      )}
      <div class="buttons">
        <button type="button" id="stop-long" onClick={close}>
          {answer === null ? "Stop" : "Put this table away"}
        </button>
      </div>
    </section>
  );
}

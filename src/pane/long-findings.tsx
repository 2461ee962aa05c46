import { count } from "./count.ts";
import type { DeskAction } from "./desk.ts";
import { displayOf } from "./display.ts";
import { type Draft, emptyDraft, type Kept, openDraft } from "./draft.ts";
import type { Figures } from "./figures.ts";
import type { LongAnswer } from "./long-work.ts";
import { freeId } from "./session-name.ts";
import { textOfSource } from "./text-of-source.ts";
import { today } from "./today.ts";
import { withoutDemo } from "./without-demo.ts";

interface LongFindingsProps {
  readonly answer: LongAnswer;
  readonly source: string | Blob;
  /** What was put right about its columns. */
  readonly corrections: Draft["corrections"];
  readonly kept: Kept;
  readonly figures: Figures;
  readonly dispatch: (action: DeskAction) => void;
  /** What shows sessions, which the pane has fetched already. */
  readonly analysis: typeof import("./analysis.ts");
  readonly parts: typeof import("./session-parts.ts");
}

/** So many shots the desk still takes, though each change then holds the page up for a moment. */
const MOST_ON_THE_DESK = 50_000;

/** What a long table says, and what can be done with it: a part of it, or all where it is not too long, on the desk. */
export function LongFindings({
  answer,
  source,
  corrections,
  kept,
  figures,
  dispatch,
  analysis,
  parts,
}: LongFindingsProps) {
  const carry = displayOf("carry", kept.units, figures);
  const { facts, builds } = withoutDemo(openDraft(kept), today());
  // What the table was read with goes along. A part has headings of its own, which need no correcting.
  const onTheDesk = (text: string, title: string, right: Draft["corrections"]) => {
    const draft = { ...emptyDraft(freeId(kept)), text, builds, corrections: right };
    dispatch({ does: "new", draft: { ...draft, facts: { ...facts, title } } });
  };
  const part = `${facts.title} (at most ${answer.sampled} shots a build, evenly picked of ${answer.shots})`;
  const local = (sentence: string) => analysis.localWords(sentence, answer.builds, figures.decimalMark);
  const [headline, ...reasons] = answer.verdict;
  return (
    <>
      <p>
        {count(answer.shots, "shot")} of {count(answer.builds.length, "build")}, {answer.counted} counted;{" "}
        {count(answer.skipped, "other row")}.{" "}
        {answer.doubts > answer.problems.length &&
          `${answer.doubts} things to look at, the first of them below.`}
      </p>
      <p class="headline">{local(headline ?? "")}</p>
      {reasons.map((sentence) => (
        <p key={sentence}>{local(sentence)}</p>
      ))}
      <analysis.FiguresTable
        name="Figures of the long table by build"
        session={{
          units: kept.units,
          table: { size: answer.shots, values: new Map(answer.metrics.map((key) => [key, NO_SHOTS])) },
        }}
        comparison={answer.comparison}
        figures={figures}
      />
      {answer.standardAir && (
        <p id="long-air">
          Carry in standard air, at sea level and 15 °C (59 °F), every shot flown by the model:{" "}
          {answer.standardAir
            .map(({ build, mean }) => `${build} ${mean === null ? "\u2013" : carry.full(mean)}`)
            .join(", ")}
          .
        </p>
      )}
      <parts.ProblemList problems={answer.problems} />
      {answer.notes.map((note) => (
        <p key={note} class="quiet">
          {note}
        </p>
      ))}
      <p class="quiet">
        These figures are of all shots. The table is not kept with the workbook. A session of its own, with
        pictures and sheets, can be made of a part of it, at most {answer.sampled} shots of each build, evenly
        picked
        {answer.shots <= MOST_ON_THE_DESK
          ? "; or of all of it, which then takes a moment at each change"
          : ""}
        .
      </p>
      <div class="buttons">
        <button type="button" id="sample-long" onClick={() => onTheDesk(answer.sample, part, {})}>
          Make a session of a part
        </button>
        {answer.shots <= MOST_ON_THE_DESK && (
          <button
            type="button"
            id="all-long"
            onClick={async () => onTheDesk(await textOfSource(source), facts.title, corrections)}
          >
            Make a session of all of it
          </button>
        )}
      </div>
    </>
  );
}

const NO_SHOTS = new Float64Array();

import { useRef } from "preact/hooks";
import { setFileText } from "../club/set-file-text.ts";
import type { Session } from "../fitting/session.ts";
import { isProblem } from "../outcome/problem.ts";
import { benchJob } from "../sheets/bench-job.ts";
import { benchLengths } from "../sheets/bench-lengths.ts";
import { benchWorkbook } from "../sheets/bench-workbook.ts";
import { chosenBuild } from "./chosen-build.ts";
import type { DeskAction } from "./desk.ts";
import type { BenchChoice } from "./draft.ts";
import { faultyLine } from "./faulty-line.ts";
import { NumberField } from "./fields.tsx";
import type { Figures } from "./figures.ts";
import { isTyping } from "./is-typing.ts";
import { SetTable } from "./set-table.tsx";
import { shaftStepOf, withShaftStep } from "./shaft-step.ts";
import type { Maker } from "./use-making.ts";
import { whenChanged } from "./when-changed.ts";

interface BenchViewProps {
  readonly session: Session;
  readonly choice: BenchChoice;
  readonly maker: Maker;
  readonly figures: Figures;
  readonly dispatch: (action: DeskAction) => void;
}

/** From the choice to a set: which build, what the set is, what speaks against it, and its Build sheet. */
export const BenchView = whenChanged((props: BenchViewProps) => <Bench {...props} />);

function Bench({ session, choice, maker, figures, dispatch }: BenchViewProps) {
  const box = useRef<HTMLTextAreaElement>(null);
  const chosen = chosenBuild(session, choice);
  const { unit } = benchLengths(session.units);
  const usual = benchJob(session, chosen, null);
  const text = choice.set ?? (isProblem(usual) ? "" : setFileText(usual.request, unit, figures.decimalMark));
  const job = choice.set === null ? usual : benchJob(session, chosen, choice.set);
  const problem = isProblem(job) ? job : null;
  const step = shaftStepOf(text);
  const working = maker.making.is === "working";
  const write = () =>
    maker.make(async (taken, made) => benchWorkbook(session, chosen, choice.set, taken, made));
  return (
    <>
      <label for="bench-build">Build to make the set from</label>
      <select
        id="bench-build"
        value={chosen}
        onChange={(event) => dispatch({ does: "bench", bench: { chosen: event.currentTarget.value } })}
      >
        {session.builds.map(({ name }) => (
          <option key={name} value={name}>
            {name}
          </option>
        ))}
      </select>
      <p class="quiet">
        {choice.set === null
          ? `The usual set for this build: grams, ${unit === "in" ? "inches" : "centimetres"}, degrees. Type over any line, or paste a set file of your own.`
          : "Your own set file: grams, degrees, and inches unless a line says “lengths; cm”."}
      </p>
      <label for="set-text">Set file, a line for each thing and each club</label>
      <textarea
        ref={box}
        id="set-text"
        rows={Math.min(18, Math.max(6, text.split("\n").length + 1))}
        spellcheck={false}
        wrap="off"
        value={text}
        aria-invalid={problem !== null}
        aria-describedby={problem ? "set-problem" : undefined}
        onInput={(event) =>
          // The build is settled with its set: a verdict that turns must not put another build's name to it.
          dispatch({
            does: "bench",
            bench: { chosen, set: event.currentTarget.value },
            typed: isTyping(event, text),
          })
        }
      />
      {problem && <SetProblem text={text} message={problem.message} />}
      {step !== null && (
        <NumberField
          label="Shaft weight, grams more a club shorter"
          value={step}
          needed
          least={-20}
          most={20}
          figures={figures}
          onChange={(grams = 0) =>
            dispatch({
              does: "bench",
              bench: { chosen, set: withShaftStep(text, grams, figures.decimalMark) },
            })
          }
        />
      )}
      {!isProblem(job) && <SetTable job={job} figures={figures} />}
      <div class="buttons">
        <button
          type="button"
          id="make-build"
          class="primary"
          disabled={problem !== null}
          aria-disabled={working}
          onClick={() => !working && void write()}
        >
          Write the Build sheet
        </button>
        {choice.set !== null && (
          <button
            type="button"
            id="usual-set"
            onClick={() => {
              // The button goes; the box is what it is about.
              box.current?.focus();
              dispatch({ does: "bench", bench: { set: null } });
            }}
          >
            Back to the usual set
          </button>
        )}
      </div>
      <p class="quiet">
        The Build sheet plans cuts, weights, lofts and lies, and checks what you measure. Makers' limits come
        first.
      </p>
    </>
  );
}

/** What is wrong with the set, beside the line that it is about where there is one. */
function SetProblem({ text, message }: { readonly text: string; readonly message: string }) {
  const fault = faultyLine(text, message);
  return (
    <p id="set-problem" class="problem" role="alert">
      {fault && (
        <>
          <b>Line {fault.line}</b>
          <code>{fault.found}</code>
        </>
      )}
      {fault ? fault.message : message}
    </p>
  );
}

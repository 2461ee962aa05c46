import { useId, useState } from "preact/hooks";
import { loftAnswers } from "../fitting/loft-answers.ts";
import type { Session } from "../fitting/session.ts";
import { isProblem } from "../outcome/problem.ts";

interface LoftQuestionProps {
  readonly session: Session;
  readonly local: (sentence: string) => string;
}

const DEGREES = [4, 3, 2, 1, -1, -2, -3, -4];

/** "What if it were two degrees weaker?", asked of any build; nothing where the table cannot be flown. */
export function LoftQuestion({ session, local }: LoftQuestionProps) {
  const [wished, setWished] = useState(session.baseline);
  const [delta, setDelta] = useState(2);
  const id = useId();
  if (!session.table.values.has("ballSpeed") || !session.table.values.has("launch")) return null;
  const names = session.builds.map(({ name }) => name);
  const build = names.includes(wished) ? wished : names[0]!;
  const answers = loftAnswers(session, build, delta);
  return (
    <>
      <h3>What if the loft were changed?</h3>
      <div class="fields roomy">
        <div>
          <label for={`${id}-build`}>Build to bend</label>
          <select id={`${id}-build`} value={build} onChange={(event) => setWished(event.currentTarget.value)}>
            {names.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </select>
        </div>
        <div>
          <label for={`${id}-delta`}>Loft change</label>
          <select
            id={`${id}-delta`}
            value={delta}
            onChange={(event) => setDelta(Number(event.currentTarget.value))}
          >
            {DEGREES.map((degrees) => (
              <option key={degrees} value={degrees}>
                {Math.abs(degrees)}° {degrees > 0 ? "weaker" : "stronger"}
              </option>
            ))}
          </select>
        </div>
      </div>
      <div id="loft-answer" aria-live="polite">
        {(isProblem(answers) ? [answers.message] : answers.words).map((sentence) => (
          <p key={sentence}>{local(sentence)}</p>
        ))}
      </div>
    </>
  );
}

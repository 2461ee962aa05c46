import { outOfHundred, roundedNote } from "../fitting/out-of-hundred.ts";
import { GOALS, type Goal, type Session } from "../fitting/session.ts";
import { isProblem } from "../outcome/problem.ts";
import { type Chance, chancePicture } from "../pictures/chance-picture.ts";
import { localWords } from "../sheets/local-words.ts";
import type { DeskAction } from "./desk.ts";
import { Drawing } from "./drawing.tsx";
import type { Figures } from "./figures.ts";
import { GOAL_WORDS } from "./goal-words.ts";
import { choiceOf, wordsOf } from "./judge.ts";

interface VerdictViewProps {
  readonly session: Session;
  /** The session that the words are about: a moment behind while shots come in. */
  readonly worded: Session;
  readonly figures: Figures;
  readonly dispatch: (action: DeskAction) => void;
}

/** Which build, why, how sure, and what to hit next. */
export function VerdictView({ session, worded, figures, dispatch }: VerdictViewProps) {
  const { chosen, next } = choiceOf(session);
  const words = wordsOf(worded);
  const names = session.builds.map(({ name }) => name);
  const local = (sentence: string) => localWords(sentence, names, figures.decimalMark);
  return (
    <>
      <label for="goal">What is wanted most</label>
      <select
        id="goal"
        value={session.goal}
        onChange={(event) => dispatch({ does: "facts", facts: { goal: event.currentTarget.value as Goal } })}
      >
        {GOALS.map((goal) => (
          <option key={goal} value={goal}>
            {GOAL_WORDS[goal]}
          </option>
        ))}
      </select>
      <p id="headline" class="headline">
        {local(words.headline)}
      </p>
      {[...words.reasons, ...words.costs].map((sentence) => (
        <p key={sentence}>{local(sentence)}</p>
      ))}
      {words.next && <p>{local(words.next)}</p>}
      <p id="hit-next" class="next">
        {local(next.why)}
      </p>
      {!isProblem(chosen) && (
        <Chances chances={chancesOf(session, chosen.chances.builds)} figures={figures} />
      )}
    </>
  );
}

function chancesOf(session: Session, builds: readonly { build: string; chance: number }[]): Chance[] {
  return builds.map(({ build, chance }) => ({
    name: build,
    place: session.builds.findIndex(({ name }) => name === build),
    chance,
    words: `${outOfHundred(chance)} in 100`,
  }));
}

function Chances({ chances, figures }: { readonly chances: readonly Chance[]; readonly figures: Figures }) {
  const text = chances.map(({ name, words }) => `${name}: ${words}.`).join(" ");
  return (
    <figure>
      <Drawing id="chances" figures={figures} draw={(frame) => chancePicture(frame, chances, text)} />
      <figcaption class="quiet">
        How likely each build is the best of those tried, as far as these shots can say. Even chances mean:
        nobody knows yet. {roundedNote(chances.map(({ chance }) => chance))}
      </figcaption>
    </figure>
  );
}

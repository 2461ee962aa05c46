import { computedWords } from "../fitting/filled-session.ts";
import { greenWords } from "../fitting/green-words.ts";
import { impossibleWords } from "../fitting/impossible-words.ts";
import { driftWarnings } from "../fitting/order-drift.ts";
import { outlierWords } from "../fitting/outlier-words.ts";
import type { Session } from "../fitting/session.ts";
import { sessionAir } from "../fitting/session-air.ts";
import { weightWords } from "../fitting/weight-words.ts";
import { isProblem } from "../outcome/problem.ts";
import { localWords } from "../sheets/local-words.ts";
import { CarriesTable } from "./carries-table.tsx";
import { displayOf } from "./display.ts";
import { evenedCarries } from "./evened-carries.ts";
import { EveryShotBar, useEveryShot } from "./every-shot.tsx";
import type { Figures } from "./figures.ts";
import { lastAnswer } from "./last-answer.ts";
import { LoftQuestion } from "./loft-question.tsx";
import { whenChanged } from "./when-changed.ts";

interface FurtherWordsProps {
  readonly session: Session;
  readonly figures: Figures;
}

/** What else the shots show: warnings, weight, carry on equal terms, greens, and what a change of loft would do. */
export const FurtherWords = whenChanged(({ session, figures }: FurtherWordsProps) => {
  const { sentences, green, columns } = furtherOf(session, figures);
  const every = useEveryShot(session, columns);
  const names = session.builds.map(({ name }) => name);
  const local = (sentence: string) => localWords(sentence, names, figures.decimalMark);
  return (
    <div id="further">
      {sentences.map((sentence) => (
        <p key={sentence}>{local(sentence)}</p>
      ))}
      <CarriesTable session={session} columns={every.columns} figures={figures} />
      <EveryShotBar {...every} />
      {green.length > 0 && (
        <>
          <h3>Into a green</h3>
          {green.map(({ build, words, computed }) => (
            <p key={build}>
              <b>{build}</b> {local(words)}
              {computed && " The landing angle is computed."}
            </p>
          ))}
        </>
      )}
      <LoftQuestion session={session} local={local} />
    </div>
  );
});

/** The last answer is remembered, for flying every shot takes a while. */
const furtherOf = lastAnswer((session: Session, figures: Figures) => {
  const air = sessionAir(session.air);
  return {
    sentences: [
      ...(isProblem(air) ? [air.message] : []),
      ...impossibleWords(session),
      ...computedWords(session),
      ...outlierWords(session),
      ...driftWarnings(session),
      ...weightWords(session),
    ],
    green: greenWords(session),
    columns: evenedCarries(session, displayOf("clubSpeed", session.units, figures).full),
  };
});

import { useEffect, useMemo, useState } from "preact/hooks";
import type { Host } from "../hosts/host.ts";
import { isProblem } from "../outcome/problem.ts";
import { playerBrief, readingBrief, shotsBrief } from "./briefs.ts";
import { BringShots } from "./bring-shots.tsx";
import { derive } from "./derive.ts";
import { openDraft } from "./draft.ts";
import { FetchNotice } from "./fetch-notice.tsx";
import {
  fetchAnalysis,
  fetchFilling,
  fetchLongTable,
  fetchSessionParts,
  fetchTables,
  fetchTheRest,
} from "./fetch-parts.ts";
import { figuresFor } from "./figures.ts";
import type { Source } from "./follow-source.ts";
import { KeepNotice } from "./keep-notice.tsx";
import { LedgerSection } from "./ledger-section.tsx";
import { MakeBar } from "./make-bar.tsx";
import { PaneHead } from "./pane-head.tsx";
import { Section } from "./section.tsx";
import { useAfterPaint } from "./use-after-paint.ts";
import { useDesk } from "./use-desk.ts";
import { useFetched } from "./use-fetched.ts";
import { useMaking } from "./use-making.ts";
import { useRememberedMapping } from "./use-remembered-mapping.ts";
import { whenIdle } from "./when-idle.ts";
import { FetchedBench, FetchedPlan } from "./workshop-views.tsx";

interface PaneProps {
  readonly host: Host;
  readonly demo: boolean;
}

/** The whole pane on one screen: each part appears when there is something to show in it. */
export function Pane({ host, demo }: PaneProps) {
  const { desk, dispatch: put, take: dispatch, ready, long, setLong, keptTrouble } = useDesk(host, demo);
  const figures = useMemo(() => figuresFor(), []);
  const draft = openDraft(desk.kept);
  const unremembered = useRememberedMapping(host, draft, dispatch);
  const { units } = desk.kept;
  const filling = useFetched(fetchFilling, draft.facts.fill);
  const waits = draft.facts.fill && !filling;
  const derived = ready ? derive(draft, units, filling?.filledSession, figures.decimalMark) : null;
  const problem = isProblem(derived) ? derived : null;
  const known = isProblem(derived) ? null : derived;
  const judged = useAfterPaint(known?.session ?? null);
  const worded = useAfterPaint(judged);
  const analysis = useFetched(fetchAnalysis);
  const parts = useFetched(fetchSessionParts);
  const reader = useFetched(fetchLongTable, long !== null);
  const maker = useMaking(host);
  const [source, follow] = useState<Source | null>(null);
  // Following ends with its session: back on the desk later, it would have missed what the table did meanwhile.
  useEffect(() => follow(null), [draft.id]);
  const tables = useFetched(fetchTables, source !== null);
  const verdict = judged && analysis ? analysis.verdictBrief(judged) : "";
  useEffect(() => (ready ? whenIdle(() => void fetchTheRest()) : undefined), [ready]);
  if (!ready) return <p class="loading">Looking for what was kept here…</p>;
  return (
    <>
      <PaneHead kept={desk.kept} dispatch={dispatch} canUndo={desk.past.length > 0} />
      <KeepNotice {...keptTrouble} unremembered={unremembered} />
      <FetchNotice />
      <div class="parts">
        <Section id="bring" title="Bring shots" startOpen>
          {() => (
            <BringShots
              key={draft.id}
              host={host}
              draft={draft}
              problem={problem}
              dispatch={dispatch}
              follow={follow}
              takeLong={setLong}
            />
          )}
        </Section>
        {tables && source?.draft === draft.id && (
          <tables.FollowTable
            host={host}
            source={source}
            draft={draft}
            dispatch={dispatch}
            stop={() => follow(null)}
          />
        )}
        {long !== null && reader && (
          <reader.LongTable
            source={long}
            host={host}
            kept={desk.kept}
            figures={figures}
            dispatch={put}
            analysis={analysis}
            parts={parts}
            close={() => setLong(null)}
          />
        )}
        {draft.text.trim() === "" && (
          <Section id="plan" title="Plan the test" startOpen={false} brief="before the first ball">
            {() => (
              <FetchedPlan
                key={draft.id}
                choice={draft.plan}
                units={units}
                figures={figures}
                maker={maker}
                dispatch={dispatch}
              />
            )}
          </Section>
        )}
        {known && !parts && <p class="quiet">Fetching what reads shots…</p>}
        {known && parts && (
          <>
            <Section
              id="reading"
              title="Check the reading"
              startOpen={false}
              brief={readingBrief(known.table)}
              alert={known.table.problems.length > 0}
            >
              {() => <parts.CheckReading table={known.table} dispatch={dispatch} />}
            </Section>
            <Section
              id="builds"
              title="Player and builds"
              startOpen={false}
              brief={playerBrief(known.session)}
            >
              {() => (
                <>
                  <parts.SessionFacts
                    facts={draft.facts}
                    units={units}
                    figures={figures}
                    dispatch={dispatch}
                  />
                  <parts.BuildsForm derived={known} draft={draft} figures={figures} dispatch={dispatch} />
                  <parts.WindowsForm
                    session={known.session}
                    own={draft.facts.windows}
                    figures={figures}
                    dispatch={dispatch}
                  />
                </>
              )}
            </Section>
            <Section
              id="shots"
              title="Judge shots"
              startOpen={false}
              brief={shotsBrief(known)}
              alert={known.far.some(({ index }) => known.session.table.keep[index])}
            >
              {() => <parts.JudgeShots derived={known} figures={figures} dispatch={dispatch} />}
            </Section>
            <Section id="findings" title="What they say" startOpen brief={verdict}>
              {() =>
                analysis ? (
                  <analysis.Findings
                    derived={known}
                    judged={judged}
                    worded={worded}
                    figures={figures}
                    dispatch={dispatch}
                  />
                ) : (
                  <p class="quiet">Fetching statistics and pictures…</p>
                )
              }
            </Section>
            <Section
              id="bench"
              title="To the bench"
              startOpen={false}
              brief={judged && analysis ? analysis.chosenBuild(judged, draft.bench) : ""}
            >
              {() =>
                worded ? (
                  <FetchedBench
                    session={worded}
                    choice={draft.bench}
                    maker={maker}
                    figures={figures}
                    dispatch={dispatch}
                  />
                ) : (
                  <p class="quiet">Working out the set…</p>
                )
              }
            </Section>
          </>
        )}
        <LedgerSection
          host={host}
          draft={draft}
          session={known?.session ?? null}
          units={units}
          maker={maker}
          dispatch={dispatch}
        />
      </div>
      <p class="heard" aria-live="polite">
        {known &&
          `Read: ${readingBrief(known.table)}; ${shotsBrief(known)}.${verdict && ` Verdict: ${verdict}.`}`}
      </p>
      <MakeBar maker={maker} session={waits ? null : (known?.session ?? null)} />
    </>
  );
}

import { useState } from "preact/hooks";
import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import { intervalPicture } from "../pictures/interval-picture.ts";
import { type MetricKey, metricOf } from "../shots/metrics.ts";
import { orderedMetrics } from "../shots/unit-set.ts";
import type { Derived } from "./derive.ts";
import type { DeskAction } from "./desk.ts";
import { displayOf } from "./display.ts";
import { Drawing } from "./drawing.tsx";
import type { Figures } from "./figures.ts";
import { FiguresTable } from "./figures-table.tsx";
import { FlightView } from "./flight-view.tsx";
import { GroupView } from "./group-view.tsx";
import { intervalsOf, intervalText } from "./intervals.ts";
import { compare } from "./judge.ts";
import { useFetched } from "./use-fetched.ts";
import { VerdictView } from "./verdict-view.tsx";
import { whenChanged } from "./when-changed.ts";

/** Fetched once the verdict stands. */
const fetchFurther = () => import("./further-words.tsx");

interface FindingsProps {
  readonly derived: Derived;
  /** The session as far as it has been judged: a moment behind while shots come in. */
  readonly judged: Session | null;
  /** The session as far as it has been put into words: a moment behind that. */
  readonly worded: Session | null;
  readonly figures: Figures;
  readonly dispatch: (action: DeskAction) => void;
}

/** What the shots say, as far as they do: sentences first, then pictures, then every figure. */
export function Findings({ derived, judged, worded, figures, dispatch }: FindingsProps) {
  const { session } = derived;
  const comparison = compare(session);
  const further = useFetched(fetchFurther);
  return (
    <>
      {judged ? (
        <>
          <Verdict session={judged} worded={worded ?? judged} figures={figures} dispatch={dispatch} />
          {further && <further.FurtherWords session={worded ?? judged} figures={figures} />}
        </>
      ) : (
        <p class="quiet">Working out the verdict…</p>
      )}
      <Group session={session} figures={figures} />
      <Flights session={worded ?? session} figures={figures} />
      <Metrics session={session} comparison={comparison} figures={figures} />
    </>
  );
}

/** The words wait for their turn while the pictures are drawn, and the pictures stay while the words are found. */
const Verdict = whenChanged(VerdictView);
const Group = whenChanged((props: PictureProps) => <GroupView {...props} />);
/** These wait with the words: their model is fitted to all shots of the session, which takes as long as the rest together. */
const Flights = whenChanged(({ session, figures }: PictureProps) => (
  <FlightView session={session} comparison={compare(session)} figures={figures} />
));
const Metrics = whenChanged((props: MetricViewProps) => (
  <>
    <MetricView {...props} />
    <FiguresTable {...props} />
  </>
));

interface PictureProps {
  readonly session: Session;
  readonly figures: Figures;
}

interface MetricViewProps extends PictureProps {
  readonly comparison: Comparison;
}

/** One metric at a time, chosen by hand; carry to begin with. */
function MetricView({ session, comparison, figures }: MetricViewProps) {
  const metrics = orderedMetrics(session.table.values.keys());
  const [wished, setWished] = useState<MetricKey>("carry");
  const metric = metrics.find(({ key }) => key === wished) ?? metrics[0];
  if (!metric) return null;
  const display = displayOf(metric.key, session.units, figures);
  const intervals = intervalsOf(comparison, metric.key, display);
  return (
    <figure>
      <label for="picture-metric">Figure to compare</label>
      <select
        id="picture-metric"
        value={metric.key}
        onChange={(event) => setWished(event.currentTarget.value as MetricKey)}
      >
        {metrics.map(({ key, label }) => (
          <option key={key} value={key}>
            {label}
          </option>
        ))}
      </select>
      <Drawing
        id="intervals"
        figures={figures}
        draw={(frame) =>
          intervalPicture(
            frame,
            intervals,
            { title: display.label, unit: display.unit, decimals: display.decimals },
            intervalText(intervals, display, figures),
          )
        }
      />
      <figcaption class="quiet">
        {metricOf(metric.key).label}: {metric.meaning}. The mark is the average; the line shows where the true
        average lies, with 95 % confidence. Lines that overlap a lot: too close to call.
      </figcaption>
    </figure>
  );
}

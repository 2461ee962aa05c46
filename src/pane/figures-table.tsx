import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import { orderedMetrics } from "../shots/unit-set.ts";
import { displayOf } from "./display.ts";
import { Sign } from "./drawing.tsx";
import type { Figures } from "./figures.ts";

interface FiguresTableProps {
  readonly session: Pick<Session, "units" | "computed"> & {
    readonly table: Pick<Session["table"], "size" | "values">;
  };
  /** What the table is called to those who hear it, where there are two. */
  readonly name?: string;
  readonly comparison: Comparison;
  readonly figures: Figures;
}

/** Each metric's mean and spread, builds side by side; wide tables scroll in their own frame. */
export function FiguresTable({ session, comparison, figures, name = "Figures by build" }: FiguresTableProps) {
  const metrics = orderedMetrics(session.table.values.keys());
  return (
    <>
      <p class="quiet">
        Averages of the counted shots, and under each how far single shots spread around it (one standard
        deviation: about two shots in three lie within it).
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
      <section class="wide" tabIndex={0} aria-label={name}>
        <table class="figures">
          <thead>
            <tr>
              <th scope="col">Figure</th>
              {comparison.builds.map((build, place) => (
                <th key={build.name} scope="col">
                  <Sign place={place} /> {build.name}
                  <small>
                    {build.kept} of {build.shots}
                  </small>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {metrics.map((metric) => {
              const display = displayOf(metric.key, session.units, figures);
              return (
                <tr key={metric.key}>
                  <th scope="row">
                    {display.unit ? `${metric.label},\u00a0${display.unit}` : metric.label}
                    {session.computed?.has(metric.key) && (
                      <small>
                        {session.computed.get(metric.key)!.size} of {session.table.size} computed
                      </small>
                    )}
                  </th>
                  {comparison.builds.map((build) => {
                    const found = build.metrics.get(metric.key);
                    return (
                      <td key={build.name}>
                        {found ? display.plain(found.mean) : "\u2013"}
                        {found && found.sd !== null && <small>±{display.plain(found.sd)}</small>}
                      </td>
                    );
                  })}
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
      <details class="meanings">
        <summary>What each figure is</summary>
        <dl>
          {metrics.map(({ key, label, meaning }) => (
            <div key={key}>
              <dt>{label}</dt>
              <dd>{meaning}</dd>
            </div>
          ))}
        </dl>
      </details>
    </>
  );
}

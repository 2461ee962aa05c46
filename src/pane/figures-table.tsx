import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import { displayUnit, orderedMetrics } from "../shots/unit-set.ts";
import { displayFactor } from "./display.ts";
import type { Figures } from "./figures.ts";

interface FiguresTableProps {
  readonly session: Session;
  readonly comparison: Comparison;
  readonly figures: Figures;
}

/** Each metric's mean and spread, builds side by side. */
export function FiguresTable({ session, comparison, figures }: FiguresTableProps) {
  const metrics = orderedMetrics(session.table.values.keys());
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section class="wide" tabIndex={0} aria-label="Figures by build, scrolls sideways">
      <table class="figures">
        <caption>Mean of the kept shots, and how far shots spread around it (one standard deviation)</caption>
        <thead>
          <tr>
            <td />
            {comparison.builds.map((build) => (
              <th key={build.name} scope="col">
                {build.name}
                <small>
                  {build.kept} of {build.shots} shots
                </small>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {metrics.map((metric) => {
            const factor = displayFactor(metric, session.units);
            const show = (value: number) => figures.show(value * factor, metric.decimals);
            return (
              <tr key={metric.key}>
                <th scope="row" title={metric.meaning}>
                  {metric.label} <small>{displayUnit(metric, session.units).replace("degrees", "°")}</small>
                </th>
                {comparison.builds.map((build) => {
                  const found = build.metrics.get(metric.key);
                  return (
                    <td key={build.name}>
                      {found ? show(found.mean) : "–"}
                      {found?.sd != null && <small>±{show(found.sd)}</small>}
                    </td>
                  );
                })}
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

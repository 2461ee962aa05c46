import { Fragment } from "preact";
import type { BenchJob } from "../sheets/bench-job.ts";
import { benchLengths } from "../sheets/bench-lengths.ts";
import { benchWords } from "../sheets/bench-words.ts";
import type { Figures } from "./figures.ts";

interface SetTableProps {
  readonly job: BenchJob;
  readonly figures: Figures;
}

/** The set in four figures a club, with what the bench must know beside the club that it is about. */
export function SetTable({ job, figures }: SetTableProps) {
  const { plan, warnings, units = "us" } = job;
  const { unit, shown, decimals } = benchLengths(units);
  const words = benchWords(job);
  const about = (club: string) => warnings.filter((warning) => warning.startsWith(`Club ${club}:`));
  const others = warnings.filter((warning) => !plan.clubs.some(({ club }) => about(club).includes(warning)));
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
      <section class="wide" tabIndex={0} aria-label="The set, worked out">
        <table class="figures set">
          <thead>
            <tr>
              <th scope="col">Club</th>
              <th scope="col">Length, {unit}</th>
              <th scope="col">Shaft, g</th>
              <th scope="col">Head, g</th>
              <th scope="col">Total, g</th>
            </tr>
          </thead>
          <tbody>
            {plan.clubs.map((club) => (
              <Fragment key={club.club}>
                <tr>
                  <th scope="row">{club.club}</th>
                  <td>{figures.plain(shown(club.length), decimals)}</td>
                  <td>{figures.show(club.shaftWeight, 1)}</td>
                  <td>{figures.show(club.headWeight, 1)}</td>
                  <td>{figures.show(club.built.weight, 0)}</td>
                </tr>
                {about(club.club).map((warning) => (
                  <tr key={warning}>
                    <td colSpan={5} class="doubt">
                      {words(warning)}
                    </td>
                  </tr>
                ))}
              </Fragment>
            ))}
          </tbody>
        </table>
      </section>
      {others.map((warning) => (
        <p key={warning} class="problem">
          {words(warning)}
        </p>
      ))}
    </>
  );
}

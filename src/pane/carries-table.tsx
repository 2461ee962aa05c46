import type { Session } from "../fitting/session.ts";
import { displayOf } from "./display.ts";
import { Sign } from "./drawing.tsx";
import type { EvenedCarries } from "./evened-carries.ts";
import type { Figures } from "./figures.ts";

interface CarriesTableProps {
  readonly session: Session;
  readonly columns: readonly EvenedCarries[];
  readonly figures: Figures;
}

/** Carries as hit beside carries with differences taken out that are not the builds'; nothing where none were. */
export function CarriesTable({ session, columns, figures }: CarriesTableProps) {
  if (columns.length === 0) return null;
  const carry = displayOf("carry", session.units, figures);
  return (
    <>
      <h3>Carry on equal terms, {carry.unit}</h3>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
      <section class="wide" tabIndex={0} aria-label="Carry on equal terms">
        <table class="carries">
          <thead>
            <tr>
              <th scope="col">Build</th>
              {columns.map(({ heading }) => (
                <th key={heading} scope="col">
                  {heading}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {session.builds.map(({ name }, place) => (
              <tr key={name}>
                <th scope="row">
                  <Sign place={place} /> {name}
                </th>
                {columns.map(({ heading, carries }) => {
                  const found = carries[place] ?? null;
                  return <td key={heading}>{found === null ? "\u2013" : carry.plain(found)}</td>;
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p class="quiet">{columns.map(({ meaning }) => meaning).join(" ")}</p>
    </>
  );
}

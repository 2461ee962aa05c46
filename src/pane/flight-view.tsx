import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import { flightPicture } from "../pictures/flight-picture.ts";
import { displayOf } from "./display.ts";
import { Drawing } from "./drawing.tsx";
import type { Figures } from "./figures.ts";
import { flightsOf, flightText } from "./flights.ts";
import { Legend } from "./legend.tsx";

interface FlightViewProps {
  readonly session: Session;
  readonly comparison: Comparison;
  readonly figures: Figures;
}

/** The builds' average flights from the side; nothing where the table has not what it takes. */
export function FlightView({ session, comparison, figures }: FlightViewProps) {
  const carry = displayOf("carry", session.units, figures);
  const height = displayOf("height", session.units, figures);
  const flights = flightsOf(session, comparison, carry, height);
  if (flights.length === 0) return null;
  const units = { ahead: carry.unit, height: height.unit, heightPerAhead: session.units === "us" ? 3 : 1 };
  return (
    <figure>
      <Drawing
        id="flights"
        figures={figures}
        draw={(frame) => flightPicture(frame, flights, units, flightText(flights, carry, height))}
      />
      <figcaption>
        <Legend entries={flights} />
        <span class="quiet">
          Average flights from the side: computed in between, they peak and land where they were measured.
        </span>
      </figcaption>
    </figure>
  );
}

import { isProblem, type Outcome } from "../../outcome/problem.ts";
import type { Air } from "../air/air.ts";
import { type FlightOptions, flyBall } from "../trajectory/fly-ball.ts";
import { isMeasured, type MeasuredShot } from "./measured-shot.ts";

/** What a flight can be asked for where the table does not say. */
export type FilledFigure = "carry" | "height" | "landingAngle";

export interface FilledShot {
  readonly carry: number;
  readonly height: number;
  readonly landingAngle: number;
  /** The figures that were computed, not measured. */
  readonly computed: readonly FilledFigure[];
  /** Whether the flight leaves the range in which the coefficients were measured. */
  readonly outside: boolean;
}

/**
 * Gives every shot carry and height (m) and landing angle (degrees): the measured figure where there is one, otherwise
 * the computed one, marked as such. A shot that cannot be flown answers its problem.
 *
 * @param options model and, from a calibration, the factors on drag and lift
 */
export function fillFlight(
  shots: readonly MeasuredShot[],
  air: Air,
  options: FlightOptions = {},
): Outcome<FilledShot>[] {
  return shots.map((shot) => {
    const flight = flyBall(shot.strike, air, options);
    if (isProblem(flight)) return flight;
    const computed: FilledFigure[] = [];
    const figure = (key: FilledFigure) => {
      const measured = shot[key];
      if (isMeasured(measured)) return measured;
      computed.push(key);
      return flight[key];
    };
    const [carry, height, landingAngle] = [figure("carry"), figure("height"), figure("landingAngle")];
    return { carry, height, landingAngle, computed, outside: flight.outside };
  });
}

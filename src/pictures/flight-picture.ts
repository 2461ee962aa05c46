import { label, rulesAcross, rulesUp } from "./axes.ts";
import { dash } from "./dash.ts";
import { type Frame, picture } from "./frame.ts";
import { linear } from "./linear.ts";
import { lookColor } from "./look.ts";
import { type Mark, mark } from "./mark.ts";
import { markerShape } from "./marker-shape.ts";
import { pathThrough } from "./path-through.ts";

/** A ball's way through the air, seen from the side. */
export interface Flight {
  readonly name: string;
  readonly place: number;
  readonly points: readonly { readonly ahead: number; readonly height: number }[];
}

const EDGE = { left: 30, right: 12, top: 18, bottom: 30 };

/** Mean flights of the builds, seen from the side; a yard up is as long as a yard ahead where the pane allows. */
export function flightPicture(
  frame: Frame,
  flights: readonly Flight[],
  units: { readonly ahead: string; readonly height: string; readonly heightPerAhead: number },
  text: string,
): Mark {
  const all = flights.flatMap((flight) => flight.points);
  const far = Math.max(1, ...all.map((point) => point.ahead)) * 1.03;
  const high = Math.max(1, ...all.map((point) => point.height)) * 1.1;
  const across = frame.width - EDGE.left - EDGE.right;
  const up = Math.max(90, (across * (high / units.heightPerAhead)) / far);
  const bottom = EDGE.top + up;
  const x = linear([0, far], [EDGE.left, EDGE.left + across]);
  const y = linear([0, high], [bottom, EDGE.top]);
  const marks = [
    ...rulesAcross(frame, y, EDGE.left, EDGE.left + across, 4),
    ...rulesUp(frame, x, EDGE.top, bottom),
    label(frame, EDGE.left, 10, `height, ${units.height}`, "start"),
    label(frame, EDGE.left + across, bottom + 26, `ahead, ${units.ahead}`, "end"),
    ...flights.flatMap(({ place, points }) => {
      const end = points.at(-1);
      const path = mark("path", {
        d: pathThrough(points.map(({ ahead, height }) => [x(ahead), y(height)])),
        fill: "none",
        stroke: lookColor(frame.look, place),
        "stroke-width": 2,
        "stroke-dasharray": dash(place),
      });
      return end ? [path, markerShape(frame.look, place, x(end.ahead), y(end.height), 10)] : [path];
    }),
  ];
  return picture(frame, bottom + EDGE.bottom, "Flights seen from the side", text, marks);
}

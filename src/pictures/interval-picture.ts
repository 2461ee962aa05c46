import { label, rulesUp } from "./axes.ts";
import { type Frame, picture } from "./frame.ts";
import { linear } from "./linear.ts";
import { lookColor } from "./look.ts";
import { type Mark, mark } from "./mark.ts";
import { markerShape } from "./marker-shape.ts";
import { round } from "./round.ts";

/** A mean and its limits. */
export interface Interval {
  readonly name: string;
  readonly place: number;
  readonly mean: number;
  /** Null where there are too few shots for limits. */
  readonly low: number | null;
  readonly high: number | null;
}

/** What the axis below the lines says. */
export interface IntervalAxis {
  readonly title: string;
  readonly unit: string;
  readonly decimals: number;
}

const ROW = 34;
const EDGE = { left: 10, right: 10, top: 20, bottom: 18 };

/** One metric, a line for each build: where its true mean lies with 95 % confidence. */
export function intervalPicture(
  frame: Frame,
  intervals: readonly Interval[],
  axis: IntervalAxis,
  text: string,
): Mark {
  const ends = intervals.flatMap(({ mean, low, high }) => [low ?? mean, high ?? mean]);
  const least = Math.min(...ends);
  const most = Math.max(...ends);
  const room = Math.max((most - least) * 0.06, 10 ** -axis.decimals);
  const x = linear([least - room, most + room], [EDGE.left, frame.width - EDGE.right]);
  const bottom = EDGE.top + intervals.length * ROW;
  const marks = [
    label(frame, EDGE.left, 11, axis.unit ? `${axis.title}, ${axis.unit}` : axis.title, "start"),
    ...rulesUp(frame, x, EDGE.top, bottom, Math.max(3, Math.floor(frame.width / 80))),
    ...intervals.flatMap((interval, i) => intervalMarks(frame, interval, axis, x, EDGE.top + i * ROW)),
  ];
  return picture(frame, bottom + EDGE.bottom, `${axis.title} by build`, text, marks);
}

function intervalMarks(
  frame: Frame,
  { name, place, mean, low, high }: Interval,
  axis: IntervalAxis,
  x: (value: number) => number,
  top: number,
): Mark[] {
  const y = top + 24;
  const color = lookColor(frame.look, place);
  const stroke = { stroke: color, "stroke-width": 2 };
  const limits =
    low === null || high === null
      ? []
      : [
          mark("line", { x1: round(x(low)), x2: round(x(high)), y1: y, y2: y, ...stroke }),
          ...[low, high].map((end) =>
            mark("line", { x1: round(x(end)), x2: round(x(end)), y1: y - 4, y2: y + 4, ...stroke }),
          ),
        ];
  const figure = mark("tspan", { "font-weight": 600 }, frame.show(mean, axis.decimals));
  const words = mark(
    "text",
    { x: EDGE.left + 2, y: top + 12, fill: frame.look.ink, ...halo(frame) },
    `${name}  `,
    figure,
  );
  return [...limits, markerShape(frame.look, place, x(mean), y, 11), words];
}

/** Keeps words readable where they cross a line. */
function halo(frame: Frame) {
  return { stroke: frame.look.surface, "stroke-width": 3, "paint-order": "stroke" };
}

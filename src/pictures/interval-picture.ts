import { label, rulesUp } from "./axes.ts";
import { type Frame, picture } from "./frame.ts";
import { linear } from "./linear.ts";
import { lookColor } from "./look.ts";
import { type Mark, mark } from "./mark.ts";
import { markerShape } from "./marker-shape.ts";
import { round } from "./round.ts";
import { wrappedWords } from "./wrapped-words.ts";

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
/** Of a name's second line and further ones. */
const LINE = 13;
/** Room for the average behind a name, about six bold letters. */
const FIGURE = 52;
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
  const names = intervals.map(({ name }) =>
    wrappedWords(name, frame.width - EDGE.left - EDGE.right - FIGURE),
  );
  let bottom = EDGE.top;
  const rows = intervals.flatMap((interval, i) => {
    const top = bottom;
    bottom += ROW + (names[i]!.length - 1) * LINE;
    return intervalMarks(frame, interval, names[i]!, axis, x, top);
  });
  const marks = [
    label(frame, EDGE.left, 11, axis.unit ? `${axis.title}, ${axis.unit}` : axis.title, "start"),
    ...rulesUp(frame, x, EDGE.top, bottom, Math.max(3, Math.floor(frame.width / 80))),
    ...rows,
  ];
  return picture(frame, bottom + EDGE.bottom, `${axis.title} by build`, text, marks);
}

function intervalMarks(
  frame: Frame,
  { place, mean, low, high }: Interval,
  name: readonly string[],
  axis: IntervalAxis,
  x: (value: number) => number,
  top: number,
): Mark[] {
  const y = top + 24 + (name.length - 1) * LINE;
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
  const words = name.map((line, l) =>
    mark(
      "text",
      { x: EDGE.left + 2, y: top + 12 + l * LINE, fill: frame.look.ink, ...halo(frame) },
      ...(l === name.length - 1 ? [`${line}  `, figure] : [line]),
    ),
  );
  return [...limits, markerShape(frame.look, place, x(mean), y, 11), ...words];
}

/** Keeps words readable where they cross a line. */
function halo(frame: Frame) {
  return { stroke: frame.look.surface, "stroke-width": 3, "paint-order": "stroke" };
}

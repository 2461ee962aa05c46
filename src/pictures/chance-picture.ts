import { type Frame, picture } from "./frame.ts";
import { linear } from "./linear.ts";
import { lookColor } from "./look.ts";
import { type Mark, mark } from "./mark.ts";
import { markerShape } from "./marker-shape.ts";
import { round } from "./round.ts";

/** A build with its chance of being the best. */
export interface Chance {
  readonly name: string;
  readonly place: number;
  /** From 0 to 1. */
  readonly chance: number;
  /** The chance as a person says it: "82 in 100". */
  readonly words: string;
}

const ROW = 34;

/** How likely each build is the best of those tried, a bar for each. */
export function chancePicture(frame: Frame, chances: readonly Chance[], text: string): Mark {
  const { look, width } = frame;
  const x = linear([0, 1], [0, width - 2]);
  const marks = chances.flatMap(({ name, place, chance, words }, i) => {
    const top = i * ROW;
    return [
      markerShape(look, place, 7, top + 9, 10),
      mark("text", { x: 18, y: top + 13, fill: look.ink }, name),
      mark(
        "text",
        { x: width - 2, y: top + 13, fill: look.ink, "text-anchor": "end", "font-weight": 600 },
        words,
      ),
      mark("rect", {
        x: 1,
        y: top + 19,
        width: width - 2,
        height: 9,
        rx: 2,
        fill: "none",
        stroke: look.line,
      }),
      mark("rect", {
        x: 1,
        y: top + 19,
        width: round(Math.max(0, x(chance))),
        height: 9,
        rx: 2,
        fill: lookColor(look, place),
      }),
    ];
  });
  return picture(frame, chances.length * ROW, "Chance of being the best of those tried", text, marks);
}

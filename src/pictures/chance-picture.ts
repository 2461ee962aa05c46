import { type Frame, picture } from "./frame.ts";
import { linear } from "./linear.ts";
import { lookColor } from "./look.ts";
import { type Mark, mark } from "./mark.ts";
import { markerShape } from "./marker-shape.ts";
import { round } from "./round.ts";
import { wrappedWords } from "./wrapped-words.ts";

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
/** Of a name's second line and further ones. */
const LINE = 13;
/** Width of a letter of the words at the right, which are bold. */
const LETTER = 6.5;

/** How likely each build is the best of those tried, a bar for each. */
export function chancePicture(frame: Frame, chances: readonly Chance[], text: string): Mark {
  const { look, width } = frame;
  const x = linear([0, 1], [0, width - 2]);
  let height = 0;
  const marks = chances.flatMap(({ name, place, chance, words }) => {
    const first = height;
    const lines = wrappedWords(name, width - 18 - words.length * LETTER - 10);
    const top = first + (lines.length - 1) * LINE;
    height = top + ROW;
    return [
      markerShape(look, place, 7, first + 9, 10),
      ...lines.map((line, l) => mark("text", { x: 18, y: first + 13 + l * LINE, fill: look.ink }, line)),
      mark(
        "text",
        { x: width - 2, y: first + 13, fill: look.ink, "text-anchor": "end", "font-weight": 600 },
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
  return picture(frame, height, "Chance of being the best of those tried", text, marks);
}

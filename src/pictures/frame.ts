import type { Look } from "./look.ts";
import { type Mark, mark } from "./mark.ts";

/** What every picture is given besides its figures. */
export interface Frame {
  readonly look: Look;
  /** Pixels. */
  readonly width: number;
  /** Begins every id in the drawing, so that two pictures on one page keep apart. */
  readonly id: string;
  /** Writes a figure on an axis or beside a mark. */
  readonly show: (value: number, decimals: number) => string;
}

const FONT = "'Segoe UI', Roboto, 'Helvetica Neue', Arial, sans-serif";

/** The outermost mark of a picture, with its name and its text for those who do not see it. */
export function picture(
  frame: Frame,
  height: number,
  title: string,
  text: string,
  marks: readonly Mark[],
): Mark {
  const { id, width } = frame;
  return mark(
    "svg",
    {
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: "img",
      "aria-labelledby": `${id}-title ${id}-text`,
      "font-family": FONT,
      "font-size": 11,
    },
    mark("title", { id: `${id}-title` }, title),
    mark("desc", { id: `${id}-text` }, text),
    ...marks,
  );
}

import type { Frame } from "./frame.ts";
import type { Linear } from "./linear.ts";
import { type Mark, mark } from "./mark.ts";
import { round } from "./round.ts";

/** Lines across at round figures, each with its figure on the left. */
export function rulesAcross(frame: Frame, scale: Linear, left: number, right: number, ticks = 5): Mark[] {
  return ticksOf(scale, ticks).map(({ value, text }) => {
    const y = round(scale(value));
    return mark(
      "g",
      {},
      mark("line", { x1: left, x2: right, y1: y, y2: y, stroke: frame.look.line, "stroke-width": 0.6 }),
      mark("text", { x: left - 4, y: y + 4, "text-anchor": "end", fill: frame.look.quiet }, text(frame)),
    );
  });
}

/** Lines up at round figures, each with its figure below. */
export function rulesUp(frame: Frame, scale: Linear, top: number, bottom: number, ticks = 5): Mark[] {
  return ticksOf(scale, ticks).map(({ value, text }) => {
    const x = round(scale(value));
    return mark(
      "g",
      {},
      mark("line", { x1: x, x2: x, y1: top, y2: bottom, stroke: frame.look.line, "stroke-width": 0.6 }),
      mark("text", { x, y: bottom + 13, "text-anchor": "middle", fill: frame.look.quiet }, text(frame)),
    );
  });
}

/** Words beside an axis. */
export function label(frame: Frame, x: number, y: number, text: string, anchor = "middle"): Mark {
  return mark("text", { x, y, "text-anchor": anchor, fill: frame.look.quiet }, text);
}

function ticksOf(scale: Linear, wanted: number) {
  const values = scale.ticks(wanted);
  const step = Math.abs((values[1] ?? 1) - (values[0] ?? 0));
  const decimals = step >= 1 ? 0 : step >= 0.1 ? 1 : 2;
  return values.map((value) => ({ value, text: (frame: Frame) => frame.show(value, decimals) }));
}

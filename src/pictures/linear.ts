import { ticks } from "d3-array";

/** Turns figures into pixels along one axis. */
export interface Linear {
  (value: number): number;
  /** About so many round figures inside the axis. */
  readonly ticks: (wanted: number) => number[];
}

/**
 * A straight scale from figures to pixels. A scale library would do the same for four times the size of all pictures
 * together, which the pane would have to load.
 *
 * `linear([0, 10], [0, 100])(5)` is 50.
 */
export function linear(figures: readonly [number, number], pixels: readonly [number, number]): Linear {
  const [from, to] = figures;
  const scale = (value: number) => pixels[0] + ((value - from) / (to - from)) * (pixels[1] - pixels[0]);
  return Object.assign(scale, { ticks: (wanted: number) => ticks(from, to, wanted) });
}

/** A tenth of a pixel is finer than a screen shows. */
export function round(value: number): number {
  return Math.round(value * 10) / 10;
}

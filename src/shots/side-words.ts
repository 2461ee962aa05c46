import type { MetricKey } from "./metrics.ts";

/** Words and letters that give a figure its sign: 1 for the positive side of a metric, -1 for the other. */
type Sides = ReadonlyMap<string, 1 | -1>;

const sides = (positive: string, negative: string): Sides =>
  new Map([
    ...positive.split(" ").map((word) => [word, 1] as const),
    ...negative.split(" ").map((word) => [word, -1] as const),
  ]);

const ACROSS = sides(
  "r rt right rechts re d droite derecha der dcha",
  "l lt left links li g gauche i izquierda izq izda",
);
const TOE = sides("t toe spitze pointe punta", "h heel ferse talon");
const HIGH = sides(
  "h hi high up above hoch oben haut alto arriba",
  "l lo low down below tief unten bas bajo abajo",
);
const UP = sides("u up upward upwards", "d dn down downward downwards");

const OF_METRIC: ReadonlyMap<MetricKey, Sides> = new Map([
  ["offline", ACROSS],
  ["direction", ACROSS],
  ["spinAxis", ACROSS],
  ["sidespin", ACROSS],
  ["path", ACROSS],
  ["face", ACROSS],
  ["faceToPath", ACROSS],
  ["strikeX", TOE],
  ["strikeY", HIGH],
  ["attack", UP],
]);

/** The sign that a word beside a figure gives it, by metric: right is positive, and so are toe, high and up. */
export function sideOf(word: string, key: MetricKey): 1 | -1 | undefined {
  return OF_METRIC.get(key)?.get(word.toLowerCase().replace(/[.:]$/, ""));
}

/** Whether figures of a metric may carry a side at all. */
export function hasSides(key: MetricKey): boolean {
  return OF_METRIC.has(key);
}

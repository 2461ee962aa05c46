/**
 * A chance of being best as it is said, in whole chances of a hundred. They are known to a few in a hundred at best,
 * and nothing is ever certain.
 *
 * @example outOfHundred(0.777) // "78"
 * @example outOfHundred(0.996) // "99 or more"
 */
export function outOfHundred(chance: number): string {
  const rounded = wholeChances(chance);
  if (rounded >= 99) return "99 or more";
  return rounded < 1 ? "fewer than 1" : String(rounded);
}

/**
 * What to say where the chances of all builds stand together and, each rounded by itself, do not make 100; empty where
 * they do, or where one is said as "99 or more", which nobody adds up. They are not bent to make 100: two builds of the
 * same chance would be told apart by it, and figures would differ from those elsewhere.
 */
export function roundedNote(chances: readonly number[]): string {
  const shown = chances.map(wholeChances);
  const sum = shown.reduce((total, one) => total + one, 0);
  return sum === 100 || Math.max(...shown) >= 99 ? "" : "Each is rounded, so together they do not make 100.";
}

function wholeChances(chance: number): number {
  return Math.round(chance * 100);
}

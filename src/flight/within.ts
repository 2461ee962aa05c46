import { invalid, type Problem } from "../outcome/problem.ts";

/**
 * Checks that a figure is a number inside its bounds, both bounds allowed. Answers the problem, or nothing when all
 * is well. The sentence names the argument, says what was found and what would do.
 *
 * @example within("launch", 99, -30, 89, "degrees")?.message // "launch should be -30 to 89 degrees, not 99"
 */
export function within(
  name: string,
  value: unknown,
  least: number,
  most: number,
  unit = "",
): Problem | undefined {
  if (typeof value === "number" && value >= least && value <= most) return undefined;
  const found = typeof value === "number" ? String(value) : `"${String(value)}"`;
  return invalid(`${name} should be ${least} to ${most}${unit && ` ${unit}`}, not ${found}`);
}

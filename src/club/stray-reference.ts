import { invalid, type Problem } from "../outcome/problem.ts";
import type { SetRequest } from "./set-request.ts";

/** Refuses steps that start from a club which the set has not, and says which of the three lines has it. */
export function strayReference({
  clubs,
  target,
  shafts,
  tipTrims = { tip: 0 },
}: SetRequest): Problem | undefined {
  const labels = clubs.map(({ club }) => club);
  const known = new Set(labels.map((label) => label.toLowerCase()));
  for (const [line, from] of [
    ["target", target],
    ["shafts", shafts],
    ["tip trims", tipTrims],
  ] as const) {
    const reference = "reference" in from ? from.reference : undefined;
    if (reference === undefined || known.has(reference.toLowerCase())) continue;
    return invalid(
      `${line} starts from club "${reference}"; it should be one of the table: ${labels.join(", ")}.`,
    );
  }
  return undefined;
}

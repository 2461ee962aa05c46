import { isProblem } from "../outcome/problem.ts";
import { type GroupSummary, groupSummary } from "../stats/index.ts";
import { buildPairs } from "./build-values.ts";
import type { Session } from "./session.ts";

/** The group that a build's kept shots make on the ground; null where no shot has both carry and offline. */
export function buildGroup(session: Session, build: string): GroupSummary | null {
  const { x, y } = buildPairs(session.table, build, "carry", "offline");
  const group = groupSummary(x, y);
  return isProblem(group) ? null : group;
}

/** Of fewer shots the middle is not known well enough to speak of a tendency (common sense, no source). */
const FEWEST = 5;

/**
 * The side that a build's shots tend to, in words; the error of the middle decides whether there is a tendency. Null
 * where too few shots were hit to speak of one.
 */
export function missSide({ n, offlineMean, offlineSd }: GroupSummary): string | null {
  if (offlineSd === null || n < FEWEST) return null;
  if (Math.abs(offlineMean) <= (2 * offlineSd) / Math.sqrt(n)) return "centred on the target line";
  return `mostly ${offlineMean > 0 ? "right" : "left"} of the target`;
}

/** Where a build's shots tend to miss, in words: to which side, and whether they spread more in line or in length. */
export function missPattern(group: GroupSummary): string {
  const { n, offlineSd, carrySd } = group;
  if (offlineSd === null || carrySd === null) return "one shot shows no pattern";
  const where = missSide(group);
  if (where === null) return `${n} shots are too few to show where they tend to go`;
  if (offlineSd > 1.6 * carrySd) return `${where}; they spread left and right more than long and short`;
  if (carrySd > 1.6 * offlineSd) return `${where}; they spread long and short more than left and right`;
  return `${where}; they spread as much in length as in line`;
}

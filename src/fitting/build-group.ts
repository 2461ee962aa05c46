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

/** Where a build's shots tend to miss, in words; the error of the middle decides whether there is a tendency. */
export function missPattern(group: GroupSummary): string {
  const { n, offlineMean, offlineSd, carrySd } = group;
  if (offlineSd === null || carrySd === null) return "one shot shows no pattern";
  if (n < FEWEST) return `${n} shots are too few to show where they tend to go`;
  const bias = Math.abs(offlineMean) > (2 * offlineSd) / Math.sqrt(n);
  const side = offlineMean > 0 ? "right" : "left";
  const where = bias ? `mostly ${side} of the target` : "centred on the target line";
  if (offlineSd > 1.6 * carrySd) return `${where}; they spread left and right more than long and short`;
  if (carrySd > 1.6 * offlineSd) return `${where}; they spread long and short more than left and right`;
  return `${where}; they spread as much in length as in line`;
}

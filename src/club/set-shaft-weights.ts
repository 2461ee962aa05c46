import { invalid, isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { checkList } from "./check-list.ts";
import { progression } from "./progression.ts";
import type { SetRequest } from "./set-request.ts";

/** Target weight of each club's shaft: the list, or the steps from the reference club; a club's own goes first. */
export function setShaftWeights({ clubs, shafts }: SetRequest): Outcome<number[]> {
  const labels = clubs.map((club) => club.club);
  const first = labels[0];
  if (first === undefined) return invalid("clubs is empty; it should list the clubs, the longest first.");
  if (shafts.kind === "list" && shafts.weights.length < clubs.length) {
    return unavailable(
      `shaft weights has ${shafts.weights.length} for ${clubs.length} clubs; ${clubs.length - shafts.weights.length} missing.`,
    );
  }
  if (shafts.kind === "list" && shafts.weights.length > clubs.length) {
    return invalid(
      `shaft weights has ${shafts.weights.length} for ${clubs.length} clubs; it should have one a club.`,
    );
  }
  const weights =
    shafts.kind === "list"
      ? [...shafts.weights]
      : progression(labels, shafts.reference ?? first, shafts.weight, shafts.step ?? 0);
  if (isProblem(weights)) return weights;
  const own = clubs.map((club, index) => club.shaft ?? weights[index]!);
  return checkList("shaft weights", own, "grams") ?? own;
}

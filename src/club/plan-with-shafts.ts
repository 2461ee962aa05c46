import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import type { SetPlan } from "./plan-set.ts";
import { type ShaftSorting, type SortOptions, sortShafts } from "./sort-shafts.ts";
import { swingweightDrift } from "./swingweight-drift.ts";

/** A set's shafts chosen from the bin, and where that takes its swingweights. */
export interface SetSorting extends ShaftSorting {
  /** Swingweight points a club with the planned head and the chosen shaft, in the set's order. */
  readonly drift: readonly number[];
}

/** Gives the measured raw shafts of a bin to the clubs of a plan; see `sortShafts`. */
export function planWithShafts(
  plan: SetPlan,
  bin: readonly number[],
  options: SortOptions = {},
): Outcome<SetSorting> {
  const targets = plan.clubs.map((club) => club.shaftWeight);
  if (bin.length < targets.length) {
    const missing = targets.length - bin.length;
    const [shafts, are] = [bin.length === 1 ? "shaft" : "shafts", missing === 1 ? "is" : "are"];
    return unavailable(
      `bin has ${bin.length} ${shafts} for ${targets.length} clubs; ${missing} more ${are} needed.`,
    );
  }
  const sorting = sortShafts(bin, targets, options);
  if (isProblem(sorting)) return sorting;
  const drift = swingweightDrift(
    plan.clubs.map((club) => club.parts),
    sorting.choices.map((choice) => choice.weight),
  );
  return isProblem(drift) ? drift : { ...sorting, drift };
}

import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { checkNumbers } from "./check-number.ts";
import { gaps } from "./gaps.ts";
import { type PlannedClub, planClub } from "./plan-club.ts";
import { setParts } from "./set-parts.ts";
import type { SetClub, SetRequest } from "./set-request.ts";
import { setShaftWeights } from "./set-shaft-weights.ts";
import { setTargets } from "./set-targets.ts";
import { setTipTrims } from "./set-tip-trims.ts";

/** A club in its set: with the steps to the club before it. */
export interface SetPlanClub extends PlannedClub {
  /** Degrees more than the club before. */
  readonly loftGap?: number;
  readonly carry?: number;
  /** Less carry than the club before, in the carry's unit. */
  readonly carryGap?: number;
}

/** A set worked out: its clubs, and what to be warned of. */
export interface SetPlan {
  /** The clubs in the request's order. */
  readonly clubs: readonly SetPlanClub[];
  /** Every warning with its club, and those of the whole set. */
  readonly warnings: readonly string[];
}

/**
 * Plans a set: for each club the shaft's weight and cuts, the head weight that meets its target, what bending to its
 * loft does to bounce, and the gaps in loft and carry. The problem of a club that cannot be built names the club.
 *
 * `carryOf` answers the carry of a club where flight can say; a club's own `carry` goes before it.
 */
export function planSet(
  request: SetRequest,
  carryOf: (club: SetClub) => number | undefined = () => undefined,
): Outcome<SetPlan> {
  const { clubs, bendLimit } = request;
  const labels = clubs.map((club) => club.club.trim().toLowerCase());
  const twice = clubs.find((_, index) => labels.indexOf(labels[index]!) !== index);
  if (twice) return invalid(`clubs has "${twice.club}" twice; each should stand once.`);
  const problem = checkNumbers([
    [bendLimit ?? 0, { name: "bend limit", unit: "degrees", least: 0 }],
    [request.tape?.up ?? 0, { name: "tape place", unit: "inches above the club's end", least: 0 }],
    [request.tape?.most ?? 0, { name: "most tape", unit: "grams, as in tape; 1; 6", least: 0 }],
    [request.ferrule ?? 0, { name: "ferrule", unit: "grams", least: 0 }],
    [request.epoxy ?? 0, { name: "epoxy", unit: "grams", least: 0 }],
  ]);
  if (problem) return problem;
  const weights = setShaftWeights(request);
  if (isProblem(weights)) return weights;
  const trims = setTipTrims(request);
  if (isProblem(trims)) return trims;
  const parts = clubs.map((club, index) => setParts(request, club, weights[index]!, trims[index]!));
  const targets = setTargets(request, parts);
  if (isProblem(targets)) return targets;
  const heavier = request.tolerances?.head;
  const planned: PlannedClub[] = [];
  for (const [index, club] of clubs.entries()) {
    const plan = planClub(club, parts[index]!, targets[index]!, bendLimit, request.tape, heavier);
    if (isProblem(plan)) return { ...plan, message: `Club ${club.club}: ${plan.message}` };
    planned.push(plan);
  }
  const carries = clubs.map((club) => club.carry ?? carryOf(club));
  // A putter's loft is no step of the set.
  const loftGaps = gaps(clubs.map(({ loft, putter }) => (putter ? undefined : loft)));
  const carryGaps = gaps(carries);
  return {
    clubs: planned.map((club, index) => {
      const step = carryGaps[index];
      const carryGap = step === undefined ? undefined : -step;
      return { ...club, loftGap: loftGaps[index], carry: carries[index], carryGap };
    }),
    warnings: [
      ...planned.flatMap(({ club, warnings }) => warnings.map((warning) => `Club ${club}: ${warning}`)),
      ...orderWarnings(clubs),
    ],
  };
}

/** Steps count from club to club, so a list that is not longest first is worth a word. */
function orderWarnings(clubs: readonly SetClub[]): string[] {
  return clubs.flatMap((club, index) => {
    const before = clubs[index - 1];
    return before && club.length > before.length
      ? [
          `Club ${club.club} is longer than ${before.club} before it; steps count from the longest to the shortest.`,
        ]
      : [];
  });
}

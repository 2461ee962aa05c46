import { isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { assembleClub } from "./assemble-club.ts";
import { type ClubParts, usualGripLength } from "./club-parts.ts";
import { type ClubTarget, targetMeasure } from "./club-target.ts";
import { withLength } from "./with-length.ts";

/** Inches of bare shaft that the shortest club searched still has beyond its grip. */
const bareShaft = 4;
/** Halvings of the search: 60 bring 50 inches down to the last binary digit. */
const halvings = 60;

/**
 * Club length in inches that brings a club to its target with the parts it has, found by halving: moment and
 * inertia grow with length. The raw shaft bounds it, with nothing off the butt; from a cut shaft a club can only
 * get shorter. Ask `checkLength` about the Rules.
 */
export function lengthFor(parts: ClubParts, target: ClubTarget): Outcome<number> {
  const measure = targetMeasure(target);
  if (isProblem(measure)) return measure;
  const { shaft, trims = {} } = parts;
  const now = trims.cutLength ?? shaft.length - (trims.tip ?? 0) - (trims.butt ?? 0);
  let high = parts.length + (shaft.length - (trims.tip ?? 0) - now);
  let low = shortestLength(parts, now);
  const longest = assembleClub(withLength(parts, high));
  if (isProblem(longest)) return longest;
  const shortest = assembleClub(withLength(parts, low));
  if (isProblem(shortest)) return shortest;
  const { wanted, of, say } = measure;
  if (wanted > of(longest) || wanted < of(shortest)) {
    return unavailable(
      `No length gives ${say(wanted)}: this shaft makes clubs of ${low.toFixed(2)} to ${high.toFixed(2)} in, ` +
        `${say(of(shortest))} to ${say(of(longest))}.`,
    );
  }
  for (let step = 0; step < halvings; step += 1) {
    const middle = (low + high) / 2;
    const club = assembleClub(withLength(parts, middle));
    if (isProblem(club)) return club;
    if (of(club) < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The length at which the saw, cutting at the butt, meets what is fixed beyond the grip. */
function shortestLength(parts: ClubParts, cutLength: number): number {
  const underGrip = parts.grip.length ?? usualGripLength;
  const placed = [parts.head, parts.ferrule, parts.epoxy, parts.tipWeight, ...(parts.tape ?? [])];
  const beyond = placed.flatMap((part) =>
    part?.place !== undefined && part.place > underGrip ? [part.place] : [],
  );
  const room = Math.min(...beyond.map((place) => place - underGrip), parts.length - underGrip - bareShaft);
  return parts.length - Math.max(0, Math.min(room, cutLength - bareShaft));
}

import type { SetRequest } from "../club/set-request.ts";
import { invalid, type Outcome } from "../outcome/problem.ts";
import type { BuildSpec } from "./build-spec.ts";
import type { ClubKind } from "./club-kind.ts";
import { standardClubs } from "./standard-clubs.ts";

/** What the fitter may say of the set before a set file says more. */
export interface SetRequestOptions {
  /** What was hit in the bay; a mid iron when left out. */
  readonly kind?: ClubKind;
  /** Words that may name the very club: a title, or the name in a club column. */
  readonly said?: string;
  /** Code for every club, before the build's own; D2 when neither says. */
  readonly swingweight?: string;
  /** Grams a club shorter; 0 when left out: constant weight. */
  readonly shaftStep?: number;
  /** Grams of the grip; 50 when left out. */
  readonly grip?: number;
}

/** Weights of small parts in grams where no set file gives them. Common practice, no source. */
const USUAL = { grip: 50, ferrule: 1, epoxy: 2 } as const;

/**
 * The set that follows from a chosen build in one step: usual lengths, lofts and lies, the build's own length and
 * loft at the club that was tested and the others moved along, its shaft weight in every club, one swingweight.
 * A set file says all of this more exactly.
 *
 * @example setRequestFor({ name: "105 g mid-launch", weight: 105 }) // 5i to PW, 105 g shafts, D2
 */
export function setRequestFor(build: BuildSpec, options: SetRequestOptions = {}): Outcome<SetRequest> {
  if (build.weight === undefined) {
    return invalid(
      `Build "${build.name}" has no shaft weight; enter it in grams, put it in the name as "95 g", or bring a set file that gives the shafts.`,
    );
  }
  const { clubs, tested } = standardClubs(options.kind ?? "mid iron", options.said);
  const reference = clubs.find(({ club }) => club === tested)!;
  const longer = build.length === undefined ? 0 : build.length - reference.length;
  const weaker = build.loft === undefined ? 0 : build.loft - reference.loft!;
  return {
    clubs: clubs.map((club) => ({ ...club, length: club.length + longer, loft: club.loft! + weaker })),
    target: { kind: "swingweight", code: options.swingweight ?? build.swingweight ?? "D2" },
    shafts: { kind: "steps", weight: build.weight, reference: tested, step: options.shaftStep ?? 0 },
    grip: { weight: options.grip ?? USUAL.grip },
    ferrule: USUAL.ferrule,
    epoxy: USUAL.epoxy,
  };
}

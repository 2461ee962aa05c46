import { invalid, isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { assembleClub } from "./assemble-club.ts";
import type { ClubParts } from "./club-parts.ts";
import { type ClubTarget, targetMeasure } from "./club-target.ts";
import { inInches } from "./in-inches.ts";

/** Which weight is to be found. Tape comes on top of any tape the club has; the others replace what it has. */
export type WeightSpot =
  | { readonly kind: "head" | "tip weight" | "butt weight" }
  | { readonly kind: "tape"; readonly place: number };

/** The club with so many grams at the spot. */
function withWeight(parts: ClubParts, spot: WeightSpot, weight: number): ClubParts {
  switch (spot.kind) {
    case "head":
      return { ...parts, head: { ...parts.head, weight } };
    case "tip weight":
      return { ...parts, tipWeight: { ...parts.tipWeight, weight } };
    case "butt weight":
      return { ...parts, buttWeight: { ...parts.buttWeight, weight } };
    case "tape":
      return { ...parts, tape: [...(parts.tape ?? []), { weight, place: spot.place }] };
  }
}

/** A gram that moves the scale by less than this is at the fulcrum. */
const nothing = 1e-9;

/**
 * Grams of head, tip weight, butt weight or tape that bring a club to its target. Moment and inertia grow in a
 * straight line with a weight at one place, so two clubs, without it and with 100 g of it, give the answer exactly.
 *
 * There is none where weight would have to be taken off instead, where the spot is at the fulcrum, or where more
 * than `most` grams were needed; the problem says by how much.
 */
export function weightFor(
  parts: ClubParts,
  spot: WeightSpot,
  target: ClubTarget,
  most: number = Number.POSITIVE_INFINITY,
): Outcome<number> {
  const measure = targetMeasure(target);
  if (isProblem(measure)) return measure;
  if (spot.kind === "tape" && !(spot.place >= 0 && spot.place <= parts.length)) {
    return invalid(
      `tape place is ${inInches(spot.place)}; it should be inches from the butt, 0 to ${inInches(parts.length)}.`,
    );
  }
  const bare = assembleClub(withWeight(parts, spot, 0));
  if (isProblem(bare)) return bare;
  const loaded = assembleClub(withWeight(parts, spot, 100));
  if (isProblem(loaded)) return loaded;
  const { wanted, of, say } = measure;
  const perGram = (of(loaded) - of(bare)) / 100;
  const missing = wanted - of(bare);
  if (Math.abs(perGram) < nothing) {
    return unavailable(`No ${spot.kind} brings ${say(wanted)}: weight at this place changes nothing.`);
  }
  const weight = missing / perGram;
  const without = `Without ${spot.kind} the club has ${say(of(bare))}`;
  if (weight < -nothing) {
    return unavailable(
      `${without}; ${say(wanted)} asks for ${(-weight).toFixed(1)} g less than none. Choose another target or lighten another part.`,
    );
  }
  if (weight > most) {
    return unavailable(`${without}; ${say(wanted)} asks for ${weight.toFixed(1)} g, more than ${most} g.`);
  }
  return Math.max(0, weight);
}

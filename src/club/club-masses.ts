import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import { checkParts } from "./check-parts.ts";
import { type ClubParts, type PlacedWeight, usualGripLength } from "./club-parts.ts";
import { cutShaft } from "./cut-shaft.ts";
import { inInches } from "./in-inches.ts";
import { type MassOnAxis, pointMass } from "./mass-on-axis.ts";
import { rodMass } from "./rod-mass.ts";
import { taperedRod } from "./tapered-rod.ts";

/** Inches a shaft may seem to reach below the club's end through rounded lengths. */
const slack = 0.01;

/**
 * The parts of a club as masses on its axis, in the order a parts list has them. Small parts without a place are taken
 * where they usually sit: a ferrule 1.5 inches and epoxy 0.5 inches above the tip (common practice, no source).
 */
export function clubMasses(parts: ClubParts): Outcome<MassOnAxis[]> {
  const problem = checkParts(parts);
  if (problem) return problem;
  const shaft = cutShaft(parts.shaft, parts.trims);
  if (isProblem(shaft)) return shaft;
  const start = parts.extension?.length ?? 0;
  const tip = start + shaft.cutLength;
  if (tip > parts.length + slack) {
    return invalid(
      `length is ${inInches(parts.length)}, but the shaft ends ${inInches(tip)} from the butt; ` +
        "cut the shaft or make the club longer.",
    );
  }
  const { grip, extension } = parts;
  const gripLength = grip.length ?? usualGripLength;
  const masses: MassOnAxis[] = [
    pointMass("head", parts.head.weight, parts.head.place ?? parts.length),
    { part: "shaft", weight: shaft.weight, place: start + shaft.balance, spread: shaft.spread },
    rodMass("grip", taperedRod(grip.weight, 0, gripLength, grip.balance ?? gripLength / 2)),
  ];
  const add = (part: string, piece: PlacedWeight | undefined, usual: number) => {
    if (piece) masses.push(pointMass(part, piece.weight, piece.place ?? Math.max(0, usual)));
  };
  add("ferrule", parts.ferrule, tip - 1.5);
  add("epoxy", parts.epoxy, tip - 0.5);
  add("tip weight", parts.tipWeight, tip);
  add("butt weight", parts.buttWeight, 0);
  for (const strip of parts.tape ?? []) add("tape", strip, strip.place);
  if (extension) {
    const end = extension.length + (extension.insert ?? 0);
    masses.push(rodMass("extension", taperedRod(extension.weight, 0, end, end / 2)));
  }
  return masses;
}

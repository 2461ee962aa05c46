import { lengthRule } from "../club/check-length.ts";
import type { BenchJob } from "./bench-job.ts";

/** The line that stands before all others. */
export const FIRST_OF_ALL =
  "The makers' limits, local codes and licensed practice come first; this sheet computes from what was entered and knows none of them. Measure twice, cut once.";

/** Where the lengths stand by the Rules, when all of them do. */
export const LENGTHS_CONFORM = `All planned lengths are within the Rules of Golf: ${lengthRule.least} in at least and, but for putters, ${lengthRule.greatest} in at most (Equipment Rules of the R&A and the USGA, Part 2, Section 1c).`;

/** Assembly, step by step, with its cautions. Common practice, no source; a maker's sheet goes before it. */
export function buildSteps({ request }: BenchJob): string[] {
  const bending =
    request.bendLimit === undefined
      ? "No bend limit was entered: ask the maker."
      : `Entered limit: ${request.bendLimit}°.`;
  return [
    "Weigh and measure every part, and number the shafts. Wear eye protection for all cutting, grinding, pulling and bending, gloves for heat, solvent and epoxy; keep others clear of the bench.",
    "Cut and grind with dust drawn off and a mask made for it, above all for composite shafts; let metal cool. Tip trim first, dry-fit the head, mark the butt by the club's length, measure twice, then trim it.",
    "Length as the Rules measure it: the sole against a plane at 60°, from the heel to the top of the grip's cap. A cap adds its thickness.",
    "Before any epoxy put the club together dry: head, ferrule, tip weight, grip laid on. Read length and swingweight and settle the weight to add; into the tip none goes after gluing.",
    "Roughen the tip as far as the hosel covers it and no further. Clean tip and bore with the solvent that the maker names, in fresh air, away from flame and sparks.",
    "Set ferrule and tip weight, mix epoxy by its maker's sheet, turn the shaft as it goes home, wipe off what comes out. Skin, eyes and lungs stay clear of epoxy.",
    "Let it cure as long and as warm as the epoxy maker's sheet says before the club is bent, gripped hard or swung. Heat to pull a head: no more than the bond needs, in fresh air, never on a composite wall.",
    `Bend loft and lie in small steps, measured after each. Cast heads and hosels with little give can crack: keep to the maker's limit. ${bending}`,
    "Grip with tape and solvent in fresh air, let it dry as its maker says, then weigh and measure the club and type what you find into the cells marked Measured: the marks follow, with or without the add-in.",
    "Change length first, then weight, and measure again. Lead: wash hands after it, never grind or heat it. Check the bond by hand before the first swing; at the first shots nobody stands in line of the head.",
  ];
}

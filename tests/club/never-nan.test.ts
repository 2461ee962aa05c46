import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assemble } from "../../src/club/assemble.ts";
import { checkLength } from "../../src/club/check-length.ts";
import { cutShaft } from "../../src/club/cut-shaft.ts";
import { cutWeight } from "../../src/club/cut-weight.ts";
import { headWeightFor } from "../../src/club/head-weight-for.ts";
import { lengthFor } from "../../src/club/length-for.ts";
import { loftChange } from "../../src/club/loft-change.ts";
import { inertiaFromPeriod, pendulumPeriod } from "../../src/club/pendulum.ts";
import { planSet } from "../../src/club/plan-set.ts";
import { progression } from "../../src/club/progression.ts";
import { sensitivities } from "../../src/club/sensitivities.ts";
import { simpleParts } from "../../src/club/simple-parts.ts";
import { sortShafts } from "../../src/club/sort-shafts.ts";
import { swingweight } from "../../src/club/swingweight.ts";
import { swingweightCode } from "../../src/club/swingweight-code.ts";
import { weightFor } from "../../src/club/weight-for.ts";
import { weightToAdd } from "../../src/club/weight-to-add.ts";
import { isProblem } from "../../src/outcome/problem.ts";

/** Any figure at all: the odd ones a cell can hold, and those a bench would type. */
const any = fc.oneof(
  fc.double(),
  fc.double({ min: 0, max: 400, noNaN: true }),
  fc.constantFrom(0, 14, -0, 1e308),
);

type Figures = readonly [number, number, number, number, number, number, number];

/** Every function of the bench, fed from seven figures. */
const functions: Record<string, (figures: Figures) => unknown> = {
  assemble: (figures) => assemble(...figures),
  checkLength: ([length]) => checkLength(length),
  cutShaft: ([weight, length, balance, tip, butt]) => cutShaft({ weight, length, balance }, { tip, butt }),
  "cutShaft by taper": ([weight, length, taper, cutLength]) =>
    cutShaft({ weight, length, taper }, { cutLength }),
  cutWeight: ([raw, length, cut]) => cutWeight(raw, length, cut),
  headWeightFor: ([length, shaft, balance, grip]) => headWeightFor("D2", length, shaft, balance, grip),
  inertiaFromPeriod: ([weight, balance, period, pivot]) => inertiaFromPeriod(weight, balance, period, pivot),
  pendulumPeriod: ([weight, balance, inertia, pivot]) => pendulumPeriod(weight, balance, inertia, pivot),
  lengthFor: ([length, head, shaft, balance, grip, moment]) => {
    const parts = simpleParts(length, head, shaft, balance, grip);
    return isProblem(parts) ? parts : lengthFor(parts, { kind: "moment", moment });
  },
  weightFor: ([length, head, shaft, balance, grip, inertia, place]) => {
    const parts = simpleParts(length, head, shaft, balance, grip);
    return isProblem(parts) ? parts : weightFor(parts, { kind: "tape", place }, { kind: "inertia", inertia });
  },
  sensitivities: ([length, head, shaft, balance, grip]) => {
    const parts = simpleParts(length, head, shaft, balance, grip);
    return isProblem(parts) ? parts : sensitivities(parts);
  },
  loftChange: ([from, to, bounce]) => loftChange(from, to, bounce),
  planSet: ([length, loft, weight, step, grip, head, inertia]) =>
    planSet({
      clubs: [
        { club: "6", length, loft, head },
        { club: "7", length, loft, headLoft: step, bounce: step },
      ],
      target: { kind: "inertia", inertia },
      shafts: { kind: "steps", weight, step },
      grip: { weight: grip },
    }),
  progression: ([value, step]) => progression(["6", "7", "8"], "7", value, step),
  sortShafts: (figures) => sortShafts(figures.slice(0, 4), figures.slice(4)),
  "sortShafts by frequency": (figures) =>
    sortShafts(figures.slice(0, 2), figures.slice(2, 3), {
      frequencies: { measured: figures.slice(3, 5), targets: figures.slice(5, 6), gramsPerCycle: figures[6] },
    }),
  swingweight: ([weight, balance, fulcrum]) => swingweight(weight, balance, fulcrum),
  swingweightCode: ([moment]) => swingweightCode(moment),
  weightToAdd: ([position]) => weightToAdd("D0", "E3", position),
};

/** Whether a figure that is none hides anywhere in an answer. */
function hasOddFigure(answer: unknown): boolean {
  if (typeof answer === "number") return !Number.isFinite(answer);
  if (typeof answer === "string") return /NaN|Infinity|undefined/.test(answer);
  return typeof answer === "object" && answer !== null && Object.values(answer).some(hasOddFigure);
}

describe("whatever the figures, the bench answers figures or a problem", () => {
  test.each(Object.entries(functions))("%s", (_, of) => {
    fc.assert(
      fc.property(fc.tuple(any, any, any, any, any, any, any), (figures) => {
        const answer = of(figures);
        expect(isProblem(answer) ? !/NaN|undefined/.test(answer.message) : !hasOddFigure(answer)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

import { swingweight } from "../../src/club/swingweight.ts";
import { SWINGWEIGHT } from "../../src/functions/balance/swingweight.ts";
import { callFunction } from "../../src/functions/define-function.ts";
import { beside } from "./beside.ts";
import type { BenchLine } from "./run.ts";

const CELLS = 100_000;

/** A whole column through the door that all spreadsheets use, beside a loop over the formula itself. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const weights = Array.from({ length: CELLS }, (_, cell) => [400 + (cell % 60)]);
  const balances = Array.from({ length: CELLS }, (_, cell) => [28 + (cell % 17) / 10]);
  const through = () => callFunction(SWINGWEIGHT, [weights, balances]);
  const loop = () => {
    const answers: unknown[][] = [];
    for (let cell = 0; cell < CELLS; cell++)
      answers.push([swingweight(weights[cell]![0]!, balances[cell]![0]!, 14)]);
    return answers;
  };
  if (JSON.stringify(through()) !== JSON.stringify(loop())) throw new Error("the two differ");
  const times = beside(through, loop, 11);
  yield {
    what: "SWINGWEIGHT over 100,000 cells beside a bare loop",
    ...times,
    goal: "at most 3",
    met: times.ratio <= 3,
  };
}

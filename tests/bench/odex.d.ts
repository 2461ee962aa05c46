/** As much of the general ODE package as the bench uses, typed after its own documentation. */
export class Solver {
  constructor(equations: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  denseOutput: boolean;
  solve(
    rates: (time: number, values: number[]) => number[],
    from: number,
    values: readonly number[],
    to: number,
    step: (
      number: number,
      before: number,
      now: number,
      values: number[],
      dense?: (component: number, time: number) => number,
    ) => boolean | undefined,
  ): unknown;
}

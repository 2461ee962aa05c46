import fc, { type IAsyncProperty, type IProperty, type Parameters } from "fast-check";

/**
 * Takes the place of fast-check while mutants are tried, for a test that runs for every mutant cannot draw thousands of
 * cases. The draws are always the same, or the score would hang on the day; a failure is not shrunk, for nobody reads it.
 */
const MOST_DRAWS = 40;

function assert<Case>(property: IProperty<Case> | IAsyncProperty<Case>, parameters?: Parameters<Case>) {
  const numRuns = Math.min(parameters?.numRuns ?? MOST_DRAWS, MOST_DRAWS);
  return fc.assert(property as IProperty<Case>, { seed: 1, endOnFailure: true, ...parameters, numRuns });
}

export default { ...fc, assert };

import fc, { type IAsyncProperty, type IProperty, type Parameters } from "fast-check";

/**
 * Takes the place of fast-check while mutants are tried, for a test that runs for every mutant cannot draw thousands of
 * cases. The draws are always the same, or the score would hang on the day; a failure is not shrunk, for nobody reads it.
 */
const MOST_DRAWS = 40;
/** A test that asks for as few has cases that cost much; a fifth of them will do. */
const DEAR = 20;

function assert<Case>(property: IProperty<Case> | IAsyncProperty<Case>, parameters?: Parameters<Case>) {
  const asked = parameters?.numRuns ?? MOST_DRAWS;
  const numRuns = asked <= DEAR ? Math.ceil(asked / 5) : Math.min(asked, MOST_DRAWS);
  return fc.assert(property as IProperty<Case>, { seed: 1, endOnFailure: true, ...parameters, numRuns });
}

export default { ...fc, assert };

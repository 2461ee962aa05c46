/** The service hands out 5 MB at once; so many values, with their formats or formulas, stay below. */
export const CELLS_AT_ONCE = 100_000;

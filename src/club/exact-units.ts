/** Grams in one avoirdupois ounce: exact by definition of the international pound (0.45359237 kg / 16). */
export const gramsPerOunce = 28.349523125;

/** Centimetres in one inch: exact by definition of the international yard (0.9144 m / 36). */
export const centimetresPerInch = 2.54;

/** Standard acceleration of gravity in m/s2: exact by convention (3rd General Conference on Weights and Measures). */
export const standardGravity = 9.80665;

/** kg cm2 in one gram inch squared: turns the sums of this folder into the unit inertia is shown in. */
export const kgCm2PerGramInch2 = (centimetresPerInch * centimetresPerInch) / 1000;

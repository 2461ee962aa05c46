import { integrate } from "./integrate.ts";

/**
 * The average of functions of `u` when `u` is the ratio of an estimated standard deviation to the true one, that is
 * the square root of chi-square over its degrees of freedom. Everything built on an estimated spread (Dunnett's
 * limits, noncentral t, the chance of being best) is a normal problem for each u, averaged like this.
 *
 * The density is u^(df - 1) exp(-df u^2 / 2) up to a constant; the constant is taken by the same quadrature, so no
 * gamma function loses digits at large df. Both ends are cut where less than e^-40 of the chi-square distribution
 * lies beyond (bounds of Laurent and Massart 2000, Annals of Statistics 28, 1302-1338, Lemma 1).
 */
export function averageOverSpread(
  df: number,
  functions: (u: number) => readonly number[],
  tolerance = 1e-10,
): number[] {
  const reach = 2 * Math.sqrt(df * 40);
  const low = Math.sqrt(Math.max(0, df - reach) / df);
  const high = Math.sqrt((df + reach + 80) / df);
  const density = (u: number) => Math.exp((df - 1) * Math.log(u) - (df * (u * u - 1)) / 2);
  // Stryker disable next-line ArithmeticOperator: a break elsewhere costs panels and leaves the integral as it is
  const breaks = [low, (low + 1) / 2, 1, (1 + high) / 2, high];
  const integrals = integrate(
    (u) => {
      const weight = density(u);
      return [weight, ...functions(u).map((value) => value * weight)];
    },
    breaks,
    tolerance,
  );
  return integrals.slice(1).map((integral) => integral / integrals[0]!);
}

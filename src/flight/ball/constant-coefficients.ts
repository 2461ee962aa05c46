import type { CoefficientModel } from "./coefficient-model.ts";

/** The same drag and lift at every speed and spin: for teaching and for checking an integrator. */
export function constantCoefficients(drag: number, lift: number): CoefficientModel {
  return {
    name: `constant ${drag}, ${lift}`,
    source: "given",
    coefficients(_speed, _spin, _reynolds, out) {
      out[0] = drag;
      out[1] = lift;
    },
    measured: () => true,
  };
}

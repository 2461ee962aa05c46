import { type CoefficientModel, POINT } from "./coefficient-model.ts";

/** The same drag and lift at every speed and spin: for teaching and for checking an integrator. */
export function constantCoefficients(drag: number, lift: number): CoefficientModel {
  return {
    name: `constant ${drag}, ${lift}`,
    source: "given",
    coefficients(point) {
      point[POINT.drag] = drag;
      point[POINT.lift] = lift;
    },
    measured: () => true,
  };
}

import { spinRatio } from "./ball.ts";
import { type CoefficientModel, POINT } from "./coefficient-model.ts";

/**
 * Drag and lift as formulas in spin ratio S and Reynolds number: CD = 0.24 + 0.18 S + 0.06 sin(pi (Re - 90000) /
 * 200000), CL = 0.54 S^0.4. Source: A. J. Smits and D. R. Smith, "A new aerodynamic model of a golf ball in flight",
 * Science and Golf II (1994) 340-347. The measured range, Re 70,000 to 210,000 and S 0.08 to 0.2, is from memory.
 */
export const SMITS_SMITH: CoefficientModel = {
  name: "Smits-Smith 1994",
  source: "Smits and Smith, Science and Golf II, 1994",
  coefficients(point) {
    const ratio = spinRatio(point[POINT.speed]!, point[POINT.spin]!);
    const reynolds = point[POINT.reynolds]!;
    point[POINT.drag] = 0.24 + 0.18 * ratio + 0.06 * Math.sin((Math.PI * (reynolds - 90_000)) / 200_000);
    point[POINT.lift] = 0.54 * ratio ** 0.4;
  },
  measured(speed, spin, reynolds) {
    const ratio = spinRatio(speed, spin);
    return reynolds >= 70_000 && reynolds <= 210_000 && ratio >= 0.08 && ratio <= 0.2;
  },
};

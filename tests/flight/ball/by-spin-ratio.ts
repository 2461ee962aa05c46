import { spinRatio } from "../../../src/flight/ball/ball.ts";
import { type CoefficientModel, POINT } from "../../../src/flight/ball/coefficient-model.ts";

/**
 * Drag and lift by spin ratio alone: a second, independent reading of the conventional ball's curves in P. W. Bearman and
 * J. K. Harvey, "Golf ball aerodynamics", Aeronautical Quarterly 27 (1976) 112-122. Measured up to a ratio of 0.28;
 * beyond, the last figure holds. A truth of another form than both models of the project, to hold their corrections to.
 */
export const BY_SPIN_RATIO: CoefficientModel = {
  name: "curves by spin ratio",
  source: "Bearman and Harvey, Aeronautical Quarterly 27, 1976, second reading",
  coefficients(point) {
    const ratio = spinRatio(point[POINT.speed]!, point[POINT.spin]!);
    point[POINT.drag] = between(DRAG, ratio);
    point[POINT.lift] = between(LIFT, ratio);
  },
  measured: (speed, spin) => spinRatio(speed, spin) >= 0.02 && spinRatio(speed, spin) <= 0.28,
};

type Curve = readonly (readonly [ratio: number, coefficient: number])[];

const LIFT: Curve = [
  [0.02011, 0.08086],
  [0.03426, 0.09753],
  [0.05235, 0.11358],
  [0.07553, 0.12901],
  [0.10232, 0.14568],
  [0.13782, 0.1679],
  [0.17231, 0.19383],
  [0.21793, 0.22593],
  [0.26327, 0.25556],
  [0.3038, 0.27901],
];
const DRAG: Curve = [
  [0.01988, 0.2642],
  [0.04022, 0.26235],
  [0.06931, 0.2642],
  [0.09886, 0.26728],
  [0.13393, 0.27778],
  [0.17631, 0.29074],
  [0.22684, 0.30679],
  [0.27879, 0.321],
];

function between(curve: Curve, ratio: number): number {
  const after = curve.findIndex(([at]) => at > ratio);
  if (after === 0) return curve[0]![1];
  if (after < 0) return curve.at(-1)![1];
  const [from, to] = [curve[after - 1]!, curve[after]!];
  return from[1] + ((ratio - from[0]) / (to[0] - from[0])) * (to[1] - from[1]);
}

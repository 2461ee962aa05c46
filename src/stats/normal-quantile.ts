/**
 * The value a standard normal stays below with probability `p`; callers have checked 0 < p < 1. Wichura's rational
 * approximations, relative error about 1e-16 (1988, Algorithm AS 241, Applied Statistics 37, 477-484).
 *
 * `normalQuantile(0.975)` is 1.959963984540054.
 */
export function normalQuantile(p: number): number {
  const fromMiddle = p - 0.5;
  // Stryker disable next-line EqualityOperator: where two approximations meet they say the same
  if (Math.abs(fromMiddle) <= 0.425) return fromMiddle * ratio(MIDDLE, 0.180625 - fromMiddle * fromMiddle);
  const depth = Math.sqrt(-Math.log(Math.min(p, 1 - p)));
  // Stryker disable next-line EqualityOperator: where two approximations meet they say the same
  const size = depth <= 5 ? ratio(SIDE, depth - 1.6) : ratio(FAR, depth - 5);
  return Math.sign(fromMiddle) * size;
}

type Coefficients = readonly (readonly [above: number, below: number])[];

/** A polynomial over another, both from pairs of coefficients, highest power first. */
function ratio(coefficients: Coefficients, r: number): number {
  let above = 0;
  let below = 0;
  for (const [a, b] of coefficients) {
    above = above * r + a;
    below = below * r + b;
  }
  return above / below;
}

const MIDDLE: Coefficients = [
  [2509.0809287301227, 5226.495278852854],
  [33430.57558358813, 28729.085735721943],
  [67265.7709270087, 39307.89580009271],
  [45921.95393154987, 21213.794301586597],
  [13731.69376550946, 5394.196021424751],
  [1971.5909503065513, 687.1870074920579],
  [133.14166789178438, 42.31333070160091],
  [3.3871328727963665, 1],
];
const SIDE: Coefficients = [
  [0.0007745450142783414, 1.0507500716444169e-9],
  [0.022723844989269184, 0.0005475938084995345],
  [0.2417807251774506, 0.015198666563616457],
  [1.2704582524523684, 0.14810397642748008],
  [3.6478483247632045, 0.6897673349851],
  [5.769497221460691, 1.6763848301838038],
  [4.630337846156546, 2.053191626637759],
  [1.4234371107496835, 1],
];
const FAR: Coefficients = [
  [2.0103343992922881e-7, 2.0442631033899397e-15],
  [2.7115555687434876e-5, 1.421511758316446e-7],
  [0.0012426609473880784, 1.8463183175100548e-5],
  [0.026532189526576124, 0.0007868691311456133],
  [0.29656057182850487, 0.014875361290850615],
  [1.7848265399172913, 0.1369298809227358],
  [5.463784911164114, 0.599832206555888],
  [6.657904643501103, 1],
];

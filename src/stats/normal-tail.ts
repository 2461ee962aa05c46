/**
 * The probability that a standard normal value exceeds `z`, for callers that have the bell, exp(-z^2 / 2), at hand:
 * the densities of a grid of normals need it anyway, and the exponential is most of the work. Cody's rational
 * approximations of the error function (1969, Mathematics of Computation 23, 631-637), relative error below 1e-15.
 */
export function normalTail(z: number, bell: number): number {
  const x = Math.abs(z) * Math.SQRT1_2;
  // Stryker disable next-line EqualityOperator: where two approximations meet they say the same
  if (x <= 0.46875) return 0.5 - 0.5 * z * Math.SQRT1_2 * errorShare(x * x);
  // Stryker disable next-line EqualityOperator: where two approximations meet they say the same
  const tail = 0.5 * bell * (x <= 4 ? middleShare(x) : farShare(x));
  // Stryker disable next-line EqualityOperator: nought is near the middle, where the first approximation serves
  return z > 0 ? tail : 1 - tail;
}

// Each is a polynomial over a polynomial, highest power first, with the coefficients of the paper.

/** erf(x) / x up to 0.46875, from the square of x. */
function errorShare(y: number): number {
  return (
    ((((0.18577770618460315 * y + 3.1611237438705655) * y + 113.86415415105016) * y + 377.485237685302) * y +
      3209.3775891384694) /
    ((((y + 23.601290952344122) * y + 244.02463793444417) * y + 1282.6165260773723) * y + 2844.236833439171)
  );
}

/** exp(x^2) erfc(x) from 0.46875 to 4. */
function middleShare(x: number): number {
  return (
    ((((((((2.1531153547440383e-8 * x + 0.5641884969886701) * x + 8.883149794388377) * x +
      66.11919063714163) *
      x +
      298.6351381974001) *
      x +
      881.952221241769) *
      x +
      1712.0476126340707) *
      x +
      2051.0783778260716) *
      x +
      1230.3393547979972) /
    ((((((((x + 15.744926110709835) * x + 117.6939508913125) * x + 537.1811018620099) * x +
      1621.3895745666903) *
      x +
      3290.7992357334597) *
      x +
      4362.619090143247) *
      x +
      3439.3676741437216) *
      x +
      1230.3393548037495)
  );
}

/** exp(x^2) erfc(x) beyond 4. */
function farShare(x: number): number {
  const y = 1 / (x * x);
  const correction =
    (y *
      (((((0.016315387137302097 * y + 0.30532663496123236) * y + 0.36034489994980445) * y +
        0.12578172611122926) *
        y +
        0.016083785148742275) *
        y +
        0.0006587491615298378)) /
    (((((y + 2.568520192289822) * y + 1.8729528499234604) * y + 0.5279051029514285) * y +
      0.06051834131244132) *
      y +
      0.0023352049762686918);
  return (1 / Math.sqrt(Math.PI) - correction) / x;
}

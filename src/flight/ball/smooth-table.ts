/**
 * Slopes of the cubic spline through unevenly spaced points, given the slopes at both ends: the curve is smooth to its
 * second derivative. The usual tridiagonal system, solved from the ends inwards.
 */
export function splineSlopes(
  places: ArrayLike<number>,
  values: ArrayLike<number>,
  first: number,
  last: number,
): Float64Array {
  const end = values.length - 1;
  const slopes = new Float64Array(values.length);
  const carried = new Float64Array(values.length);
  slopes[0] = first;
  slopes[end] = last;
  for (let i = 1; i < end; i += 1) {
    const before = places[i]! - places[i - 1]!;
    const after = places[i + 1]! - places[i]!;
    const rise = (values[i]! - values[i - 1]!) / before;
    const next = (values[i + 1]! - values[i]!) / after;
    const pivot = 2 * (before + after) - after * carried[i - 1]!;
    carried[i] = before / pivot;
    const known = 3 * (after * rise + before * next) - (i === end - 1 ? before * last : 0);
    slopes[i] = (known - after * slopes[i - 1]!) / pivot;
  }
  for (let i = end - 2; i > 0; i -= 1) slopes[i]! -= carried[i]! * slopes[i + 1]!;
  return slopes;
}

/** Values and slopes at the crossings of a grid, row by row; `cross` is the slope in both directions. */
export interface GridSlopes {
  readonly value: ArrayLike<number>;
  readonly across: ArrayLike<number>;
  readonly down: ArrayLike<number>;
  readonly cross: ArrayLike<number>;
}

/** Cubic Hermite basis as powers: rows are value and slope at 0, value and slope at 1. */
const BASIS = [
  [1, 0, -3, 2],
  [0, 1, -2, 1],
  [0, 0, 3, -2],
  [0, 0, -1, 1],
] as const;

/**
 * The 16 coefficients of every cell of a grid, for a surface that meets values and slopes at each crossing: power of the
 * way down x 4 + power of the way across. A bicubic Hermite patch, so that the surface has no kinks.
 */
export function bicubicPatches(
  rows: ArrayLike<number>,
  columns: ArrayLike<number>,
  grid: GridSlopes,
): Float64Array {
  const width = columns.length;
  const patches = new Float64Array((rows.length - 1) * (width - 1) * 16);
  for (let row = 0; row < rows.length - 1; row += 1) {
    for (let column = 0; column < width - 1; column += 1) {
      const patch = patches.subarray((row * (width - 1) + column) * 16);
      const high = rows[row + 1]! - rows[row]!;
      const wide = columns[column + 1]! - columns[column]!;
      for (let corner = 0; corner < 4; corner += 1) {
        const below = corner >> 1;
        const right = corner & 1;
        const at = (row + below) * width + column + right;
        addCorner(patch, BASIS[below * 2]!, BASIS[right * 2]!, grid.value[at]!);
        addCorner(patch, BASIS[below * 2]!, BASIS[right * 2 + 1]!, grid.across[at]! * wide);
        addCorner(patch, BASIS[below * 2 + 1]!, BASIS[right * 2]!, grid.down[at]! * high);
        addCorner(patch, BASIS[below * 2 + 1]!, BASIS[right * 2 + 1]!, grid.cross[at]! * high * wide);
      }
    }
  }
  return patches;
}

function addCorner(
  patch: Float64Array,
  down: readonly number[],
  across: readonly number[],
  by: number,
): void {
  for (let i = 0; i < 4; i += 1)
    for (let j = 0; j < 4; j += 1) patch[i * 4 + j]! += by * down[i]! * across[j]!;
}

/**
 * The lower triangle L of a symmetric positive definite matrix, L times its transpose being the matrix, each row up to
 * the diagonal; null where the matrix is not positive definite, as when two columns of a design say the same thing.
 */
export function cholesky(matrix: readonly (readonly number[])[]): number[][] | null {
  const lower: number[][] = [];
  for (const [i, given] of matrix.entries()) {
    const row: number[] = [];
    lower.push(row);
    for (let j = 0; j <= i; j++) {
      let left = given[j]!;
      for (let k = 0; k < j; k++) left -= row[k]! * lower[j]![k]!;
      if (j < i) row.push(left / lower[j]![j]!);
      // What is left of a column after the others, against what it was: rounding leaves about 1e-16.
      else if (left > 1e-12 * given[i]!) row.push(Math.sqrt(left));
      else return null;
    }
  }
  return lower;
}

/** Solves the matrix of a triangle (see `cholesky`) for a right-hand side. */
export function choleskySolve(lower: readonly (readonly number[])[], right: readonly number[]): number[] {
  const size = lower.length;
  const x = [...right];
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < i; k++) x[i]! -= lower[i]![k]! * x[k]!;
    x[i]! /= lower[i]![i]!;
  }
  for (let i = size - 1; i >= 0; i--) {
    for (let k = i + 1; k < size; k++) x[i]! -= lower[k]![i]! * x[k]!;
    x[i]! /= lower[i]![i]!;
  }
  return x;
}

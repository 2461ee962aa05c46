import { sum } from "simple-statistics";
import { type Outcome, unavailable } from "../outcome/problem.ts";

/** The bare solution of a least squares problem. */
export interface LeastSquares {
  readonly slopes: readonly number[];
  /** Of the matrix of products of the columns: times the residual variance, the covariance of the slopes. */
  readonly inverse: readonly (readonly number[])[];
  readonly residualSum: number;
}

/**
 * The multiples of `columns` that come nearest to `y`. Columns are made orthogonal one after the other, each twice,
 * which is as sound as Householder's reflections and shorter to read (Giraud, Langou and Rozloznik 2005, Computers
 * and Mathematics with Applications 50, 1069-1075: "twice is enough").
 */
export function leastSquares(
  y: readonly number[],
  columns: readonly (readonly number[])[],
): Outcome<LeastSquares> {
  const basis: number[][] = [];
  /** Makes the columns out of the basis: a column each, down to the diagonal. */
  const triangle: number[][] = [];
  for (const [j, column] of columns.entries()) {
    const size = norm(column);
    const { rest, shares } = takeOff(column, basis);
    const left = norm(rest);
    if (!(left > 1e-11 * size)) {
      return unavailable(
        `Column ${j + 1} does not vary, or follows from the columns before it, so its own effect cannot be told.`,
      );
    }
    triangle.push([...shares, left]);
    basis.push(rest.map((value) => value / left));
  }
  const { rest, shares } = takeOff(y, basis);
  const inverseOfTriangle = columns.map((_, j) =>
    backSubstitute(
      triangle,
      columns.map((_, i) => Number(i === j)),
    ),
  );
  return {
    slopes: backSubstitute(triangle, shares),
    inverse: columns.map((_, i) =>
      columns.map((_, j) => sum(inverseOfTriangle.map((column) => column[i]! * column[j]!))),
    ),
    residualSum: dot(rest, rest),
  };
}

/** What is left of a column when its shares of an orthonormal basis are taken off, and those shares. */
function takeOff(column: readonly number[], basis: readonly number[][]) {
  let rest = [...column];
  const shares = new Array<number>(basis.length).fill(0);
  // Stryker disable next-line EqualityOperator: a third pass finds nothing left to take off
  for (let pass = 0; pass < 2; pass++) {
    for (const [i, direction] of basis.entries()) {
      const share = dot(rest, direction);
      shares[i]! += share;
      rest = rest.map((value, row) => value - share * direction[row]!);
    }
  }
  return { rest, shares };
}

function backSubstitute(triangle: readonly number[][], right: readonly number[]): number[] {
  const answer = [...right];
  for (let i = answer.length - 1; i >= 0; i--) {
    for (let j = i + 1; j < answer.length; j++) answer[i]! -= triangle[j]![i]! * answer[j]!;
    answer[i]! /= triangle[i]![i]!;
  }
  return answer;
}

function dot(a: readonly number[], b: readonly number[]): number {
  return sum(a.map((value, i) => value * b[i]!));
}

function norm(a: readonly number[]): number {
  return Math.sqrt(dot(a, a));
}

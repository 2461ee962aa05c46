import { expect, test } from "vitest";
import { cholesky, choleskySolve } from "../../src/stats/cholesky.ts";
import { expectClose } from "./expect-close.ts";

// Whole numbers, by hand: the rows of the triangle multiplied with each other give the matrix back.
const matrix = [
  [4, 12, -16],
  [12, 37, -43],
  [-16, -43, 98],
];
const triangle = [[2], [6, 1], [-8, 5, 3]];

test("a matrix of whole numbers has the triangle that it is the square of", () => {
  expect(cholesky(matrix)).toEqual(triangle);
});

test("the solution put into the matrix gives the right-hand side", () => {
  const found = choleskySolve(triangle, [1, -2, 5]);
  matrix.forEach((row, i) => {
    expectClose(
      row.reduce((sum, value, j) => sum + value * found[j]!, 0),
      [1, -2, 5][i]!,
      1e-11,
    );
  });
});

test("columns that say the same thing, a column of nought and a negative diagonal have no triangle", () => {
  expect(
    cholesky([
      [1, 3],
      [3, 9],
    ]),
  ).toBeNull();
  expect(cholesky([[0]])).toBeNull();
  expect(cholesky([[-1]])).toBeNull();
  // A third column that is the sum of two, which rounding hides in the last digits.
  const [a, b] = [
    [0.1, 0.7, 0.3],
    [0.2, 0.1, 0.9],
  ];
  const columns = [a, b, a.map((value, i) => value + b[i]!)];
  const products = columns.map((one) =>
    columns.map((other) => one.reduce((sum, value, i) => sum + value * other[i]!, 0)),
  );
  expect(cholesky(products)).toBeNull();
});

test("whether a matrix has a triangle does not hang on the unit", () => {
  for (const unit of [1e-9, 1e9]) {
    const found = cholesky(matrix.map((row) => row.map((value) => value * unit * unit)))!;
    expectClose(found[2]![1], 5 * unit);
  }
});

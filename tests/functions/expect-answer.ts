import { expect } from "vitest";
import type { Example } from "../../src/functions/define-function.ts";

/** Holds an answer, a single value or rows of cells, to the answer of a worked example. */
export function expectAnswer(answer: unknown, wanted: Example["answer"]): void {
  if (typeof wanted !== "object") {
    expectShown(Array.isArray(answer) ? answer[0]![0] : answer, wanted);
    return;
  }
  expect(Array.isArray(answer)).toBe(true);
  const rows = answer as unknown[][];
  expect(rows.map((row) => row.length)).toEqual(wanted.map((row) => row.length));
  wanted.forEach((row, r) => {
    row.forEach((shown, c) => {
      expectShown(rows[r]![c], shown);
    });
  });
}

/** A figure in an example carries the digits of its source; the function must agree to half of the last one. */
function expectShown(found: unknown, shown: unknown): void {
  if (typeof shown !== "number") {
    expect(found).toBe(shown);
    return;
  }
  const decimals = (String(shown).split(".")[1] ?? "").length;
  expect(Number(found).toFixed(decimals)).toBe(shown.toFixed(decimals));
}

import { describe, expect, it } from "vitest";
import { FUNCTIONS } from "../../src/functions/catalogue.ts";
import { callFunction } from "../../src/functions/define-function.ts";

/** A figure in an example carries the digits of its source; the function must agree to half of the last one. */
function expectShown(found: unknown, shown: unknown): void {
  if (typeof shown !== "number") {
    expect(found).toBe(shown);
    return;
  }
  const decimals = (String(shown).split(".")[1] ?? "").length;
  expect(Number(found).toFixed(decimals)).toBe(shown.toFixed(decimals));
}

describe("every function answers its own worked example", () => {
  for (const spec of FUNCTIONS) {
    it(`${spec.id}: ${spec.example.source}`, () => {
      const answer = callFunction(spec, spec.example.call);
      const wanted = spec.example.answer;
      if (!Array.isArray(wanted)) {
        expectShown(Array.isArray(answer) ? answer[0]![0] : answer, wanted);
        return;
      }
      expect(Array.isArray(answer)).toBe(true);
      const rows = answer as unknown[][];
      expect(rows.map((row) => row.length)).toEqual(wanted.map((row) => row.length));
      wanted.forEach((row, r) => {
        row.forEach((shown: unknown, c: number) => {
          expectShown(rows[r]![c], shown);
        });
      });
    });
  }
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { visibleParts } from "../../../src/hosts/excel/visible-parts.ts";
import type { StyledArea, StyleName } from "../../../src/sheets/plan.ts";

const SIZE = 9;
const styles: StyleName[] = ["plain", "title", "figure", "input"];

const painted = fc.record({
  area: fc.record({
    row: fc.integer({ min: 0, max: SIZE - 4 }),
    column: fc.integer({ min: 0, max: SIZE - 4 }),
    rows: fc.integer({ min: 1, max: 4 }),
    columns: fc.integer({ min: 1, max: 4 }),
  }),
  style: fc.constantFrom(...styles),
});

/** What each cell shows when areas are painted in order, and how often it was painted. */
function canvas(areas: readonly StyledArea[]) {
  const shown: Record<string, StyleName> = {};
  const coats: Record<string, number> = {};
  for (const { area, style } of areas) {
    for (let r = area.row; r < area.row + area.rows; r++) {
      for (let c = area.column; c < area.column + area.columns; c++) {
        shown[`${r},${c}`] = style;
        coats[`${r},${c}`] = (coats[`${r},${c}`] ?? 0) + 1;
      }
    }
  }
  return { shown, coats };
}

describe("the visible parts of painted areas", () => {
  test("show the same and paint no cell twice", () => {
    fc.assert(
      fc.property(fc.array(painted, { maxLength: 6 }), (areas) => {
        const parts = canvas(visibleParts(areas));
        expect(parts.shown).toEqual(canvas(areas).shown);
        expect(Object.values(parts.coats).every((count) => count === 1)).toBe(true);
      }),
    );
  });
});

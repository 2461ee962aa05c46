import type { Area, FormulaCell, SheetPlan } from "./plan.ts";

/** A formula that fills several cells, and which. */
export interface Spill {
  readonly formula: string;
  readonly area: Area;
  readonly answers: NonNullable<FormulaCell["spills"]>;
}

/** The formulas of a sheet that fill more cells than their own. */
export function spillsOf(sheet: Pick<SheetPlan, "blocks">): Spill[] {
  return sheet.blocks.flatMap(({ row, column, cells }) =>
    cells.flatMap((line, i) =>
      line.flatMap((value, j): Spill[] => {
        if (typeof value !== "object" || !value?.spills) return [];
        const { formula, spills } = value;
        const size = { rows: spills.length, columns: spills[0]?.length ?? 0 };
        return [{ formula, answers: spills, area: { row: row + i, column: column + j, ...size } }];
      }),
    ),
  );
}

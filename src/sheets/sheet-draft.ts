import type {
  Area,
  Block,
  CellValue,
  ChartPlan,
  ColumnWidth,
  ConditionPlan,
  FormattedArea,
  FormulaCell,
  NotePlan,
  PrintPlan,
  RowHeight,
  SheetPlan,
  StyledArea,
  StyleName,
  TablePlan,
  ValidationPlan,
} from "./plan.ts";

/** Short for an area: where it starts and how far it reaches. */
export function area(row: number, column: number, rows = 1, columns = 1): Area {
  return { row, column, rows, columns };
}

/** A formula with the answer it had when the plan was made. */
export function formula(text: string, value: string | number | boolean): FormulaCell {
  return { formula: text, value };
}

/** Points; a spreadsheet refuses a higher row (published as one of its limits). */
const HIGHEST_ROW = 409;

/** A sheet plan while it is being drawn up: the one mutable thing in this folder, never handed on. */
export class SheetDraft {
  private readonly blocks: Block[] = [];
  private readonly styles: StyledArea[] = [];
  private readonly formats: FormattedArea[] = [];
  private readonly widths: ColumnWidth[] = [];
  private readonly heights: RowHeight[] = [];
  private readonly merges: Area[] = [];
  private readonly tables: TablePlan[] = [];
  private readonly ticks: Area[] = [];
  private readonly validations: ValidationPlan[] = [];
  private readonly conditions: ConditionPlan[] = [];
  private readonly charts: ChartPlan[] = [];
  private readonly notes: NotePlan[] = [];
  private frozen: SheetPlan["frozen"];
  private printed: PrintPlan | undefined;

  constructor(
    readonly name: string,
    private readonly hidden = false,
  ) {}

  /**
   * Puts a rectangle of cells down, with a look and a number format for all of it where given. An empty text leaves
   * the cell empty: not every host could tell the two apart.
   */
  put(
    row: number,
    column: number,
    cells: readonly (readonly CellValue[])[],
    style?: StyleName,
    format?: string,
  ): void {
    if (cells.length === 0 || cells[0]!.length === 0) return;
    this.blocks.push({
      row,
      column,
      cells: cells.map((line) => line.map((cell) => (cell === "" ? null : cell))),
    });
    const whole = area(row, column, cells.length, cells[0]!.length);
    if (style) this.style(whole, style);
    if (format) this.format(whole, format);
  }

  /** Text across several columns, as one merged cell. */
  putAcross(
    row: number,
    column: number,
    columns: number,
    cell: CellValue,
    style: StyleName,
    points?: number,
  ): void {
    this.put(row, column, [[cell]]);
    const whole = area(row, column, 1, columns);
    if (columns > 1) this.merges.push(whole);
    this.style(whole, style);
    if (points) this.height(row, points);
  }

  merge(where: Area): void {
    this.merges.push(where);
  }

  style(where: Area, style: StyleName): void {
    this.styles.push({ area: where, style });
  }

  format(where: Area, format: string): void {
    this.formats.push({ area: where, format });
  }

  width(column: number, columns: number, characters: number): void {
    this.widths.push({ column, columns, characters });
  }

  height(row: number, points: number, rows = 1): void {
    this.heights.push({ row, rows, points: Math.min(points, HIGHEST_ROW) });
  }

  table(table: TablePlan): void {
    this.tables.push(table);
  }

  tick(where: Area): void {
    this.ticks.push(where);
  }

  validate(validation: ValidationPlan): void {
    this.validations.push(validation);
  }

  condition(condition: ConditionPlan): void {
    this.conditions.push(condition);
  }

  chart(chart: ChartPlan): void {
    this.charts.push(chart);
  }

  note(row: number, column: number, text: string): void {
    this.notes.push({ row, column, text });
  }

  freeze(rows: number, columns: number): void {
    this.frozen = { rows, columns };
  }

  print(print: PrintPlan): void {
    this.printed = print;
  }

  plan(): SheetPlan {
    const { name, blocks, styles, formats, widths, heights, merges, tables, ticks, validations } = this;
    const { conditions, charts, notes, hidden } = this;
    return {
      name,
      blocks,
      styles,
      formats,
      widths,
      heights,
      merges,
      tables,
      ticks,
      validations,
      conditions,
      charts,
      notes,
      hidden,
      ...(this.frozen ? { frozen: this.frozen } : {}),
      ...(this.printed ? { print: this.printed } : {}),
    };
  }
}

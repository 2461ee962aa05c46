import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/preset-sheets-core";
import type { CatalogueEntry } from "../../functions/catalogue.ts";
import type { Cell } from "../../functions/cell.ts";
import { NAMESPACE } from "../../functions/namespace.ts";
import { isProblem } from "../../outcome/problem.ts";

/** Where a cell stands, and why there is no figure in it. */
export type Explain = (sheetId: string, row: number, column: number, why: string) => void;

/** A class as the grid's formula engine wants it, with the name that formulas call it by. */
export type CellFunction = [new (name: string) => BaseFunction, string];

/**
 * Dresses one of our functions for the grid's engine. The engine takes classes, not functions: a plain function
 * registered with it would see blanks as 0 and stop all calculation if it threw.
 */
export function cellFunction(entry: CatalogueEntry, explain: Explain): CellFunction {
  class CellFunctionOfOurs extends BaseFunction {
    override minParams = entry.least;
    override maxParams = entry.most;

    override calculate(...given: BaseValueObject[]): BaseValueObject {
      const cells = given.map(rawCells);
      const wrong = cells.flat(2).find((cell) => cell instanceof ErrorValueObject);
      if (wrong) return wrong as ErrorValueObject;
      const answer = entry.run(...cells);
      const first = (Array.isArray(answer) ? answer.flat() : [answer]).find(isProblem);
      explain(this.subUnitId ?? "", this.row, this.column, first?.message ?? "");
      return Array.isArray(answer) ? arrayOf(answer) : objectOf(answer as Cell);
    }
  }
  return [CellFunctionOfOurs, `${NAMESPACE}.${entry.id}`];
}

/** A reference to one cell counts as that cell; an argument left out is undefined. Errors stay as they are. */
function rawCells(given: BaseValueObject): unknown {
  if (!given.isArray()) return given.isNull() ? undefined : rawCell(given);
  const array = given as ArrayValueObject;
  const rows = Array.from({ length: array.getRowCount() }, (_, row) =>
    Array.from({ length: array.getColumnCount() }, (_, column) => rawCell(array.get(row, column))),
  );
  return rows.length === 1 && rows[0]!.length === 1 ? rows[0]![0] : rows;
}

function rawCell(value: ReturnType<ArrayValueObject["get"]>): unknown {
  if (!value || value.isNull()) return null;
  return value.isError() ? value : value.getValue();
}

function objectOf(answer: Cell): BaseValueObject {
  if (isProblem(answer)) {
    return ErrorValueObject.create(
      answer.kind === "invalid" ? ErrorType.VALUE : ErrorType.NA,
      answer.message,
    );
  }
  if (typeof answer === "number") return NumberValueObject.create(answer);
  return typeof answer === "boolean" ? BooleanValueObject.create(answer) : StringValueObject.create(answer);
}

function arrayOf(answers: readonly (readonly Cell[])[]): ArrayValueObject {
  return ArrayValueObject.create({
    calculateValueList: answers.map((row) => row.map(objectOf)),
    rowCount: answers.length,
    columnCount: answers[0]?.length ?? 0,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

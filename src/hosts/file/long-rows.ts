import { columnName } from "../../sheets/a1.ts";
import type { CellValue } from "../../sheets/plan.ts";
import { fileFormula } from "./file-formula.ts";
import { fileXml } from "./file-text.ts";
import type { LongRun } from "./long-runs.ts";

const ROWS_AT_ONCE = 400;

/**
 * The rows of a run as a worksheet's XML, some hundreds at a time. Each cell takes the look of the cell above it in
 * the pattern row, whose XML is given.
 */
export function* longRows(run: LongRun, pattern: string): Generator<string> {
  const styles = stylesOf(pattern);
  const width = Math.max(styles.length, ...run.cells.slice(0, 1).map((cells) => run.column + cells.length));
  const names = Array.from({ length: width }, (_, column) => columnName(column));
  let xml = "";
  for (const [i, cells] of run.cells.entries()) {
    const row = run.first + i + 1;
    xml += `<row r="${row}">`;
    for (let column = 0; column < width; column++) {
      xml += cellXml(cells[column - run.column] ?? null, `r="${names[column]}${row}"`, styles[column] ?? "");
    }
    xml += "</row>";
    if ((i + 1) % ROWS_AT_ONCE === 0) {
      yield xml;
      xml = "";
    }
  }
  yield xml;
}

/** How many pieces the rows of a run come in. */
export function piecesOf({ cells }: LongRun): number {
  return Math.ceil((cells.length + 1) / ROWS_AT_ONCE);
}

function cellXml(value: CellValue, place: string, style: string): string {
  switch (typeof value) {
    case "number":
      return `<c ${place}${style}><v>${value}</v></c>`;
    case "boolean":
      return `<c ${place}${style} t="b"><v>${value ? 1 : 0}</v></c>`;
    case "string":
      return `<c ${place}${style} t="inlineStr"><is><t xml:space="preserve">${fileXml(value)}</t></is></c>`;
  }
  if (value === null) return style === "" ? "" : `<c ${place}${style}/>`;
  const formula = `<f>${fileXml(fileFormula(value.formula))}</f>`;
  const answer = value.value;
  if (typeof answer === "string")
    return `<c ${place}${style} t="str">${formula}<v>${fileXml(answer)}</v></c>`;
  const type = typeof answer === "boolean" ? ' t="b"' : "";
  return `<c ${place}${style}${type}>${formula}<v>${Number(answer)}</v></c>`;
}

/** By column, ` s="3"` for a cell with a look. */
function stylesOf(pattern: string): (string | undefined)[] {
  const styles: (string | undefined)[] = [];
  for (const [, letters, attributes] of pattern.matchAll(/<c r="([A-Z]+)\d+"([^>]*)/g)) {
    styles[columnNumber(letters!)] = / s="\d+"/.exec(attributes!)?.[0];
  }
  return styles;
}

function columnNumber(letters: string): number {
  return [...letters].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

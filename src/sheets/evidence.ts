import type { Session } from "../fitting/session.ts";
import type { FormulaCell } from "./plan.ts";
import { formula } from "./sheet-draft.ts";
import type { ShotsLayout } from "./shots-layout.ts";
import type { WindowsPlace } from "./windows-block.ts";

/**
 * A formula that says whether the shots are still those that the written sentences were worked out from. It adds up
 * every figure of every kept shot, weighted by its row, and the lengths of the build names; a change of any of them
 * moves the sum, and so does a target window that was typed over.
 */
export function evidenceFormula(
  session: Session,
  shots: ShotsLayout,
  made: string,
  windows: WindowsPlace["limits"],
): FormulaCell {
  const weight = `(${shots.keep}=TRUE)*(ROW(${shots.keep})-${shots.firstRow})`;
  const typed = windows ? `+SUM(${windows.cells})` : "";
  const sum = `SUMPRODUCT(${weight}*${shots.allFigures})+SUMPRODUCT(${weight}*LEN(${shots.build}))${typed}`;
  const expected = weightedSum(session, shots) + (windows?.sum ?? 0);
  const close = `ABS(${sum}-${expected})<=0.000001*(1+ABS(${expected}))`;
  const same = `Worked out ${made}. The shots have not changed since.`;
  const changed = `Worked out ${made}. SHOTS CHANGED SINCE: the averages follow them, the sentences do not. Make the sheets again.`;
  return formula(`IF(IFERROR(${close},FALSE),"${same}","${changed}")`, same);
}

function weightedSum(session: Session, shots: ShotsLayout): number {
  const { table } = session;
  let sum = 0;
  for (let i = 0; i < table.size; i++) {
    if (!table.keep[i]) continue;
    let row = table.build[i]!.length;
    for (const { key } of shots.metrics) {
      const value = table.values.get(key)![i]!;
      if (!Number.isNaN(value)) row += value;
    }
    sum += row * (i + 1);
  }
  return sum;
}

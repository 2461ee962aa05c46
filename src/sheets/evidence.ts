import { buildPairs } from "../fitting/build-values.ts";
import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import type { FormulaCell } from "./plan.ts";
import { formula } from "./sheet-draft.ts";
import type { ShotsLayout } from "./shots-layout.ts";
import type { WindowsPlace } from "./windows-block.ts";
import type { WorkingsLayout } from "./workings-sheet.ts";

/** Fine enough for a hundredth in one of a hundred shots, coarse enough for the last digits of any spreadsheet. */
const CLOSE = 1e-11;

/**
 * A formula that says whether the shots are still those that the written sentences were worked out from. It adds up
 * count, mean and spread of every build and metric, each weighted by its row on the Workings sheet, the products of
 * carry and offline, and the target windows. A figure, a tick, a build's name or a window that is changed moves the
 * sum; sorting the shots does not.
 */
export function evidenceFormula(
  session: Session,
  comparison: Comparison,
  shots: ShotsLayout,
  workings: WorkingsLayout,
  made: string,
  windows: WindowsPlace["limits"],
): FormulaCell {
  const terms = (["n", "Mean", "SD"] as const).map((column) => {
    const cells = workings.all(column);
    return `SUMPRODUCT(ROW(${cells})-${workings.first},${cells})`;
  });
  const [carry, offline] = [shots.figures("carry"), shots.figures("offline")];
  const grouped = session.table.values.has("carry") && session.table.values.has("offline");
  if (grouped) terms.push(`SUMPRODUCT(--(${shots.keep}=TRUE),${carry},${offline})`);
  if (windows) terms.push(`SUM(${windows.cells})`);
  const expected =
    weightedSum(session, comparison, shots) + (grouped ? products(session) : 0) + (windows?.sum ?? 0);
  const close = `ABS(${terms.join("+")}-(${expected}))<=${CLOSE.toFixed(11)}*(1+ABS(${expected}))`;
  const same = `Worked out ${made}. The shots have not changed since.`;
  const changed = `Worked out ${made}. SHOTS CHANGED SINCE: the averages follow them, the sentences do not. Make the sheets again.`;
  return formula(`IF(IFERROR(${close},FALSE),"${same}","${changed}")`, same);
}

function weightedSum(session: Session, comparison: Comparison, shots: ShotsLayout): number {
  let sum = 0;
  session.builds.forEach(({ name }, b) => {
    const build = comparison.builds.find((one) => one.name === name)!;
    shots.metrics.forEach(({ key }, m) => {
      const { n = 0, mean = 0, sd = 0 } = build.metrics.get(key) ?? {};
      sum += (n + mean + (sd ?? 0)) * (b * shots.metrics.length + m + 1);
    });
  });
  return sum;
}

function products({ table, builds }: Session): number {
  let sum = 0;
  for (const { name } of builds) {
    const { x, y } = buildPairs(table, name, "carry", "offline");
    x.forEach((carry, i) => {
      sum += carry * y[i]!;
    });
  }
  return sum;
}

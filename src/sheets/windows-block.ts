import type { Session } from "../fitting/session.ts";
import { WINDOW_METRICS } from "../fitting/target-windows.ts";
import { metricOf } from "../shots/metrics.ts";
import { showing } from "../shots/showing.ts";
import { areaName, cellName } from "./a1.ts";
import { BEFORE_BUILDS, PER_BUILD } from "./comparison-table.ts";
import { numberFormat, unitText } from "./display-session.ts";
import type { CellValue } from "./plan.ts";
import { area, formula, type SheetDraft } from "./sheet-draft.ts";
import type { ShotsLayout } from "./shots-layout.ts";
import type { WorkingsLayout } from "./workings-sheet.ts";

/** Where the windows stand, so that the evidence line can tell when they were changed. */
export interface WindowsPlace {
  /** Next free row. */
  readonly end: number;
  /** Cells of the limits and their sum when the sheet was made; null where the table has no such metric. */
  readonly limits: { readonly cells: string; readonly sum: number } | null;
}

/**
 * Target windows that can be typed over, and beside them the share of each build's kept shots that fall inside, by
 * native formulas. The windows are the trade's usual ones for the club until the shop types its own.
 */
export function putWindows(
  draft: SheetDraft,
  session: Session,
  shots: ShotsLayout,
  workings: WorkingsLayout,
  from: number,
): WindowsPlace {
  const keys = WINDOW_METRICS.filter((key) => session.table.values.has(key) && session.windows[key]);
  if (keys.length === 0) return { end: from, limits: null };
  draft.putAcross(from, 0, BEFORE_BUILDS, "Target windows", "headingLeft");
  session.builds.forEach(({ name }, b) => {
    draft.putAcross(from, BEFORE_BUILDS + b * PER_BUILD, PER_BUILD, name, "headingCentre");
  });
  draft.put(
    from + 1,
    0,
    [
      [
        "",
        "",
        ...session.builds.flatMap((_, b) =>
          b === 0 ? ["From", "To", "Inside", null] : [null, null, "Inside", null],
        ),
      ],
    ],
    "faint",
  );
  let sum = 0;
  keys.forEach((key, r) => {
    const metric = metricOf(key);
    const row = from + 2 + r;
    const shown = showing(metric, session.units);
    const window = session.windows[key]!;
    const [low, high] = [shown(window.from), shown(window.to)];
    sum += low + high;
    draft.put(row, 0, [[metric.label, unitText(metric, session.units)]], "label");
    draft.put(row, BEFORE_BUILDS, [[low, high]], "input", numberFormat(metric.decimals));
    const limits = [0, 1].map((step) => cellName(row, BEFORE_BUILDS + step, "both"));
    session.builds.forEach(({ name }, b) => {
      const column = shots.figures(key);
      const n = workings.cell(name, key, "n");
      const inside = `(${shots.build}=${workings.buildCell(name)})*(${shots.keep}=TRUE)*ISNUMBER(${column})*(${column}>=${limits[0]})*(${column}<=${limits[1]})`;
      const cell: CellValue = formula(
        `IF(${n}>0,SUMPRODUCT(${inside})/${n},"")`,
        share(session, name, key, low, high),
      );
      draft.put(row, BEFORE_BUILDS + b * PER_BUILD + 2, [[cell]], "figure", "0%");
    });
  });
  const limits = area(from + 2, BEFORE_BUILDS, keys.length, 2);
  return { end: from + 2 + keys.length, limits: { cells: areaName(limits, "both"), sum } };
}

/** Share of a build's kept shots inside a window, as the formula works it out. */
function share(
  session: Session,
  build: string,
  key: (typeof WINDOW_METRICS)[number],
  low: number,
  high: number,
): number | string {
  const { table } = session;
  const column = table.values.get(key)!;
  const mine = Array.from(column.keys()).filter(
    (i) => table.keep[i] && table.build[i] === build && !Number.isNaN(column[i]!),
  );
  if (mine.length === 0) return "";
  return mine.filter((i) => column[i]! >= low && column[i]! <= high).length / mine.length;
}

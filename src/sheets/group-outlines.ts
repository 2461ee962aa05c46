import type { Comparison } from "../fitting/compare-builds.ts";
import type { Session } from "../fitting/session.ts";
import { chiSquareQuantile } from "../stats/index.ts";
import { cellName } from "./a1.ts";
import { FIRST_CHART_COLUMN, FIRST_CHART_ROW } from "./chart-place.ts";
import { buildColor } from "./palette.ts";
import type { CellValue, SeriesPlan } from "./plan.ts";
import { area, formula, type SheetDraft } from "./sheet-draft.ts";
import type { ShotsLayout } from "./shots-layout.ts";
import type { WorkingsLayout } from "./workings-sheet.ts";

/** Points around an outline; the last is the first again. */
const POINTS = 33;

/** Spreads from the middle of a normal group to the outline that holds 95 % of its shots. */
const SPREADS = Math.sqrt(chiSquareQuantile(0.95, 2));

/**
 * An outline around each build's group that would hold 95 % of the shots of a normal one, as native formulas: unticking
 * a shot draws it anew. From the spreads and the correlation r of carry and offline a point at angle t lies at
 * offline s SD cos t and carry s SD (r cos t + sqrt(1 - r^2) sin t) from the middle, s^2 the chi-square quantile with
 * two degrees of freedom. A build of fewer than three shots has no outline: all its points lie on the mean. Answers
 * the series and, for the axes, the outlines as they are.
 */
export function putGroupOutlines(
  workings: SheetDraft,
  session: Session,
  comparison: Comparison,
  shots: ShotsLayout,
  layout: WorkingsLayout,
): { series: SeriesPlan[]; offline: number[]; carry: number[] } {
  const first = FIRST_CHART_COLUMN + 6 * session.builds.length + 24;
  const found = { series: [] as SeriesPlan[], offline: [] as number[], carry: [] as number[] };
  session.builds.forEach(({ name }, b) => {
    const column = first + 3 * b;
    const figures = comparison.builds.find((one) => one.name === name)!.metrics;
    const r = correlation(session, name, figures.get("offline")?.mean ?? 0, figures.get("carry")?.mean ?? 0);
    const ends = (["offline", "carry"] as const).map((key) => ({
      mean: layout.local(name, key, "Mean"),
      sd: layout.local(name, key, "SD"),
      column: shots.figures(key),
      middle: figures.get(key)?.mean ?? 0,
      spread: figures.get(key)?.sd ?? 0,
    }));
    const [x, y] = [ends[0]!, ends[1]!];
    const both = `(${shots.build}=${layout.local(name, "carry", "Build")})*(${shots.keep}=TRUE)*ISNUMBER(${x.column})*ISNUMBER(${y.column})`;
    const count = `SUMPRODUCT(${both})`;
    const products = `SUMPRODUCT(${both}*(${x.column}-${x.mean})*(${y.column}-${y.mean}))`;
    const ratio = `MAX(-1,MIN(1,${products}/(${count}-1)/${x.sd}/${y.sd}))`;
    const rCell = cellName(FIRST_CHART_ROW, column + 2, "both");
    workings.put(FIRST_CHART_ROW - 1, column, [[`${name}: outline`, "", "Correlation"]], "headingCentre");
    workings.put(FIRST_CHART_ROW, column + 2, [[formula(`IF(${count}>2,IFERROR(${ratio},""),"")`, r ?? "")]]);
    const rows: CellValue[][] = Array.from({ length: POINTS }, (_, i) => {
      const t = (2 * Math.PI * (i % (POINTS - 1))) / (POINTS - 1);
      const [c, s] = [SPREADS * Math.cos(t), SPREADS * Math.sin(t)];
      const across = r === null ? x.middle : x.middle + c * x.spread;
      const up = r === null ? y.middle : y.middle + y.spread * (r * c + Math.sqrt(1 - r * r) * s);
      found.offline.push(across);
      found.carry.push(up);
      return [
        formula(`IF(ISNUMBER(${rCell}),${x.mean}+(${c})*${x.sd},N(${x.mean}))`, across),
        formula(
          `IF(ISNUMBER(${rCell}),${y.mean}+${y.sd}*(${rCell}*(${c})+SQRT(1-${rCell}^2)*(${s})),N(${y.mean}))`,
          up,
        ),
      ];
    });
    workings.put(FIRST_CHART_ROW, column, rows, "plain");
    const at = (step: number) => ({
      sheet: layout.sheet,
      area: area(FIRST_CHART_ROW, column + step, POINTS),
    });
    found.series.push({
      name: `${name}: 95 % of shots`,
      x: at(0),
      y: at(1),
      color: buildColor(b),
      marker: "none",
      markerSize: 2,
      line: "solid",
      unlisted: true,
    });
  });
  return found;
}

/** Correlation of offline and carry, as the formula works it out; null where it has none. */
function correlation({ table }: Session, build: string, across: number, up: number): number | null {
  const [x, y] = [table.values.get("offline")!, table.values.get("carry")!];
  const mine = Array.from(x.keys()).filter((i) => table.keep[i] && table.build[i] === build);
  const pairs = mine.filter((i) => !Number.isNaN(x[i]!) && !Number.isNaN(y[i]!));
  if (pairs.length < 3) return null;
  const sd = (column: Float64Array, middle: number) => {
    const present = mine.filter((i) => !Number.isNaN(column[i]!));
    return Math.sqrt(present.reduce((sum, i) => sum + (column[i]! - middle) ** 2, 0) / (present.length - 1));
  };
  const products = pairs.reduce((sum, i) => sum + (x[i]! - across) * (y[i]! - up), 0) / (pairs.length - 1);
  const ratio = products / sd(x, across) / sd(y, up);
  return Number.isFinite(ratio) ? Math.max(-1, Math.min(1, ratio)) : null;
}

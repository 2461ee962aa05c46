import { bisector } from "d3-array";
import { strFromU8, strToU8, unzipSync } from "fflate";
import { CHART_LOOK } from "../../sheets/chart-look.ts";
import type { SheetPlan, WorkbookPlan } from "../../sheets/plan.ts";
import { longRows, piecesOf } from "./long-rows.ts";
import type { LongRun } from "./long-runs.ts";
import { zipParts } from "./zip-parts.ts";

/**
 * Puts into a written file what the library has no word for: that points have no line between them, how faint the
 * grid is, what charts are called, that text stays text when its cell is edited. And what was kept from it because it
 * would take too long: the rows of long tables, a list for each sheet.
 */
export function finishParts(
  bytes: Uint8Array,
  plan: WorkbookPlan,
  runs: readonly (readonly LongRun[])[],
  told: (share: number) => void,
): Uint8Array {
  const parts = unzipSync(bytes);
  const pieces = runs.flat().reduce((sum, run) => sum + piecesOf(run), 0);
  let packed = 0;
  return zipParts(
    Object.keys(parts).map((path) => {
      const [, folder, number] = /(\w+)\/[a-z]+(\d+)\.xml$/.exec(path) ?? [];
      const place = Number(number) - 1;
      if (folder === "worksheets" && runs[place]?.length) {
        return { path, pieces: counted(withRuns(strFromU8(parts[path]!), runs[place])), long: true };
      }
      if (path === "xl/styles.xml") return edited(keepAsText);
      if (folder === "charts") return edited(finishChart);
      if (folder === "drawings") return edited((xml) => nameCharts(xml, plan.sheets[place]!));
      return { path, pieces: [parts[path]!] };

      function edited(edit: (xml: string) => string) {
        return { path, pieces: [strToU8(edit(strFromU8(parts[path]!)))] };
      }
    }),
  );

  function* counted(rows: Iterable<Uint8Array>): Generator<Uint8Array> {
    for (const piece of rows) {
      yield piece;
      told(Math.min(1, ++packed / pieces));
    }
  }
}

/** A worksheet with the rows of each run between those that the library wrote. */
function* withRuns(xml: string, runs: readonly LongRun[]): Generator<Uint8Array> {
  const starts = [...xml.matchAll(/<row r="(\d+)"/g)].map((found) => ({
    row: Number(found[1]) - 1,
    at: found.index,
  }));
  const byRow = bisector((start: (typeof starts)[number]) => start.row);
  const end = xml.indexOf("</sheetData>");
  let done = 0;
  for (const run of [...runs].sort((a, b) => a.first - b.first)) {
    const pattern = byRow.left(starts, run.pattern);
    const next = starts[byRow.left(starts, run.first)]?.at ?? end;
    yield strToU8(xml.slice(done, next));
    for (const rows of longRows(run, xml.slice(starts[pattern]!.at, starts[pattern + 1]?.at ?? end))) {
      yield strToU8(rows);
    }
    done = next;
  }
  yield strToU8(xml.slice(done));
}

/** Takes the lines away that `scatterSeries` marked, keeps the others straight and the grid faint. */
function finishChart(xml: string): string {
  return xml
    .replace(/<a:ln w="(\d+)"\/>/g, '<a:ln w="$1"><a:noFill/></a:ln>')
    .replaceAll("</c:yVal>", '</c:yVal><c:smooth val="0"/>')
    .replace("<c:majorGridlines/>", FAINT_GRID);
}

/** A point is 12,700 of the units of a drawing. */
const FAINT_GRID = `<c:majorGridlines><c:spPr><a:ln w="${CHART_LOOK.gridlineWeight * 12_700}"><a:solidFill><a:srgbClr val="${CHART_LOOK.gridline.slice(1).toUpperCase()}"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>`;

function nameCharts(xml: string, { charts }: SheetPlan): string {
  return xml.replace(/name="Chart (\d+)"/g, (_, n) => `name="${attribute(charts[Number(n) - 1]!.name)}"`);
}

/** See `KEPT_AS_TEXT`. */
function keepAsText(xml: string): string {
  return xml.replace(
    /<xf ([^>]*?) applyProtection="true"([^>]*)>(<alignment[^>]*>)?<protection hidden="1"\/><\/xf>/g,
    (_, before: string, after: string, alignment: string | undefined) =>
      `<xf ${before}${after} quotePrefix="1">${alignment ?? ""}</xf>`,
  );
}

function attribute(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
}

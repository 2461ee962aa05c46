import { strFromU8, strToU8, type Unzipped, unzipSync, zipSync } from "fflate";
import type { WorkbookPlan } from "../../sheets/plan.ts";

const STYLES_PART = "xl/styles.xml";

/**
 * Puts into a written file what the library has no word for: that points have no line between them, how faint the grid
 * is, what charts are called, and that text stays text when its cell is edited. A file
 * that needs none of it is left as it is, since taking a long table apart and together again is slow.
 */
export function finishParts(bytes: Uint8Array, plan: WorkbookPlan): Uint8Array {
  if (!hasCharts(plan) && !hasKeptText(bytes)) return bytes;
  const parts = unzipSync(bytes);
  change(parts, STYLES_PART, keepAsText);
  plan.sheets.forEach((sheet, i) => {
    change(parts, `xl/drawings/drawing${i + 1}.xml`, (xml) =>
      xml.replace(/name="Chart (\d+)"/g, (_, n) => `name="${attribute(sheet.charts[Number(n) - 1]!.name)}"`),
    );
  });
  for (const path of Object.keys(parts))
    if (path.startsWith("xl/charts/chart")) change(parts, path, finishChart);
  return zipSync(parts, { level: 6 });
}

function hasCharts(plan: WorkbookPlan): boolean {
  return plan.sheets.some(({ charts }) => charts.length > 0);
}

function hasKeptText(bytes: Uint8Array): boolean {
  const [styles] = Object.values(unzipSync(bytes, { filter: ({ name }) => name === STYLES_PART }));
  return styles !== undefined && strFromU8(styles).includes('<protection hidden="1"/>');
}

/** Takes the lines away that `scatterSeries` marked, keeps the others straight and the grid faint. */
function finishChart(xml: string): string {
  return xml
    .replace(/<a:ln w="(\d+)"\/>/g, '<a:ln w="$1"><a:noFill/></a:ln>')
    .replaceAll("</c:yVal>", '</c:yVal><c:smooth val="0"/>')
    .replace("<c:majorGridlines/>", FAINT_GRID);
}

const FAINT_GRID =
  '<c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="DDD9CC"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>';

/** See `KEPT_AS_TEXT`. */
function keepAsText(xml: string): string {
  return xml.replace(
    /<xf ([^>]*?) applyProtection="true"([^>]*)>(<alignment[^>]*>)?<protection hidden="1"\/><\/xf>/g,
    (_, before: string, after: string, alignment: string | undefined) =>
      `<xf ${before}${after} quotePrefix="1">${alignment ?? ""}</xf>`,
  );
}

function change(parts: Unzipped, path: string, edit: (xml: string) => string): void {
  const part = parts[path];
  if (part) parts[path] = strToU8(edit(strFromU8(part)));
}

function attribute(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
}

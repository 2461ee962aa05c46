import { openBrowser } from "../browser/open-browser.ts";
import { servePage } from "../browser/serve-page.ts";
import { openWorkbench } from "../browser/workbench-page.ts";
import { median, shown } from "./beside.ts";
import type { BenchLine } from "./run.ts";

const CELLS = 10_000;
const ROUNDS = 7;

/** Recalculating 10,000 cells of one function of ours in the open grid, beside 10,000 of a native formula like it. */
export async function* bench(): AsyncGenerator<BenchLine> {
  const [served, browser] = await Promise.all([servePage(), openBrowser()]);
  try {
    const { page } = await openWorkbench(browser, served.address);
    await page.evaluate(async (cells) => {
      const { grid, workbook } = globalThis.workbench;
      const formulas = {
        ours: "=CLUB.SWINGWEIGHT(A#,B#,$D$1)",
        native: "=ROUND(A#*(B#-$D$1)/28.349523125,1)",
      };
      for (const [name, formula] of Object.entries(formulas)) {
        const sheet = workbook.create(name, cells + 10, 6);
        sheet.getRange("D1").setValue(14);
        const rows = Array.from({ length: cells }, (_, at) => [
          { v: 400 + (at % 60) },
          { v: 28 + (at % 17) / 10 },
          { f: formula.replaceAll("#", String(at + 1)) },
        ]);
        sheet.getRange(`A1:C${cells}`).setValues(rows);
        await grid.getFormula().onCalculationResultApplied();
      }
    }, CELLS);
    const times: Record<"ours" | "native", number[]> = { ours: [], native: [] };
    for (let round = 0; round < 2 * ROUNDS; round++) {
      // By turns, first ours, then native, then the other way round.
      const name = [0, 3].includes(round % 4) ? "ours" : "native";
      const took = await page.evaluate(
        async ([name, fulcrum, cells]) => {
          const { grid, workbook } = globalThis.workbench;
          const sheet = workbook.getSheetByName(name as string)!.activate();
          const last = sheet.getRange(`C${cells}`);
          const before = last.getRawValue();
          const began = performance.now();
          sheet.getRange("D1").setValue(fulcrum as number);
          await grid.getFormula().onCalculationResultApplied();
          const took = performance.now() - began;
          if (last.getRawValue() === before) throw new Error(`${name} was not recalculated: ${before}`);
          return took;
        },
        [name, 13 + (round % 8) / 10, CELLS] as const,
      );
      times[name].push(took);
    }
    const [own, other] = [median(times.ours), median(times.native)];
    yield {
      what: "10,000 cells of SWINGWEIGHT recalculated in the open grid beside 10,000 of native ROUND",
      ratio: shown(own / other),
      ownMs: shown(own),
      nativeMs: shown(other),
      rounds: ROUNDS,
      goal: "at most 2",
      met: own <= 2 * other,
    };
  } finally {
    await browser.close();
    served.close();
  }
}

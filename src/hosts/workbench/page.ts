import "./page.css";
import { CATALOGUE } from "../../functions/catalogue.ts";
import type { FunctionMetadata } from "../../functions/function-metadata.ts";
import { mountPane } from "../../pane/mount.tsx";
import { atOnce } from "../../slices/at-once.ts";
import { about } from "./about.ts";
import { cellFunction } from "./cell-function.ts";
import { keepChartsCurrent } from "./chart-pictures.ts";
import { foldAfterWriting } from "./fold-after-writing.ts";
import { functionHelp } from "./function-help.ts";
import { createGrid } from "./grid.ts";
import { workbenchHost } from "./host.ts";
import { planOfGrid } from "./plan-of-grid.ts";
import type { Memory } from "./remembered.ts";
import { saveButton } from "./save-button.ts";
import { showWhy } from "./show-why.ts";

await openPage();

async function openPage(): Promise<void> {
  const place = document.querySelector<HTMLElement>("#grid")!;
  const help = functionHelp(CATALOGUE, await metadata());
  const why = showWhy(document.querySelector<HTMLElement>("#why")!);
  place.replaceChildren();
  const [grid, workbook] = createGrid(place, {
    functions: CATALOGUE.map((entry) => cellFunction(entry, why.explain)),
    help,
    dark: matchMedia("(prefers-color-scheme: dark)").matches,
  });
  why.follow(grid, workbook);
  const memory: Memory = new Map();
  keepChartsCurrent(grid, workbook, memory);
  const introduction = document.querySelector<HTMLDetailsElement>("#about")!;
  const host = foldAfterWriting(workbenchHost(grid, workbook, memory, browserStore()), introduction);
  const save = {
    save: document.querySelector<HTMLButtonElement>("#save")!,
    line: document.querySelector<HTMLElement>("#saving")!,
    stop: document.querySelector<HTMLButtonElement>("#stop-saving")!,
  };
  saveButton(save, grid, () => planOfGrid(workbook, memory));
  await about(introduction, workbook, host);
  mountPane(document.querySelector<HTMLElement>("#pane")!, host, { demo: true });
  // For the tests, and for the curious who open the browser's console.
  Object.assign(globalThis, {
    workbench: { grid, workbook, host, plan: () => atOnce(planOfGrid(workbook, memory)) },
  });
}

/** Help for the functions is a comfort: where it cannot be had, the page opens without. */
async function metadata(): Promise<readonly FunctionMetadata[]> {
  try {
    return (await (await fetch("functions.json")).json()).functions;
  } catch {
    return [];
  }
}

/** Some browsers throw at the mere mention. */
function browserStore(): Storage | null {
  try {
    return globalThis.localStorage;
  } catch {
    return null;
  }
}

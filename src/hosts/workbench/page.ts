import "./page.css";
import type { CatalogueEntry } from "./catalogue-entry.ts";
import { cellFunction } from "./cell-function.ts";
import { functionHelp } from "./function-help.ts";
import { createGrid } from "./grid.ts";

const CATALOGUE: CatalogueEntry[] = [{id: "SWINGWEIGHT", least: 2, most: 3, run: () => "D8.9"}];
const place = document.querySelector<HTMLElement>("#grid")!;
place.textContent = "";
const grid = createGrid(place, {
  functions: CATALOGUE.map((entry) => cellFunction(entry, () => {})),
  help: functionHelp(CATALOGUE, []),
  dark: matchMedia("(prefers-color-scheme: dark)").matches,
});
Object.assign(globalThis, { workbench: { grid } });

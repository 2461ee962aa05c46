import { HEADWEIGHT } from "../../functions/balance/head-weight.ts";
import { SWINGWEIGHT } from "../../functions/balance/swingweight.ts";
import type { FunctionSpec } from "../../functions/define-function.ts";
import { exampleFormula } from "../../functions/example-formula.ts";
import { FLIGHT } from "../../functions/flight/flight.ts";
import { CUTWEIGHT } from "../../functions/set/cut-weight.ts";
import { PROGRESSION } from "../../functions/set/progression.ts";
import { SUMMARY } from "../../functions/shots/summary.ts";
import type { Host } from "../host.ts";
import type { Workbook } from "./grid.ts";

/** One function of each family or two, with what it answers. */
const EXAMPLES: readonly (readonly [words: string, spec: FunctionSpec])[] = [
  ["Swingweight of a club", SWINGWEIGHT],
  ["Head weight for a swingweight", HEADWEIGHT],
  ["Weight of a cut shaft", CUTWEIGHT],
  ["Shaft weights through a set", PROGRESSION],
  ["What a few shots come to", SUMMARY],
  ["A ball's flight", FLIGHT],
];

const CLOSED = "about-closed";

/**
 * What the page is, in three lines, and formulas to try: a press puts one into the selected cell, where it can be
 * changed. Open on a first visit; afterwards as it was left.
 */
export async function about(element: HTMLDetailsElement, workbook: Workbook, host: Host): Promise<void> {
  const list = element.querySelector("ul")!;
  for (const [words, spec] of EXAMPLES) list.append(exampleItem(words, exampleFormula(spec), workbook));
  element.open = (await host.recall(CLOSED)) === null;
  element.addEventListener("toggle", () => void host.keep(CLOSED, element.open ? null : "yes"));
}

function exampleItem(words: string, formula: string, workbook: Workbook): HTMLLIElement {
  const item = document.createElement("li");
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = words;
  const code = document.createElement("code");
  code.textContent = formula;
  button.title = "Puts the formula into the selected cell";
  button.append(code);
  button.addEventListener("click", () => {
    const cell = workbook.getActiveCell() ?? workbook.getActiveSheet().getRange(0, 0);
    cell.setValue({ f: formula });
  });
  item.append(button);
  return item;
}

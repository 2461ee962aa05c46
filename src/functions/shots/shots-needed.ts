import { shotsNeeded as shotsNeededFor } from "../../stats/shots-needed.ts";
import { answerCells } from "../answer-cells.ts";
import type { FunctionSpec } from "../define-function.ts";

export const SHOTSNEEDED: FunctionSpec = {
  id: "SHOTSNEEDED",
  arguments: [
    {
      name: "sd",
      kind: "number",
      expects: "the spread of single shots, above 0",
      above: 0,
      zeroIsBlank: true,
    },
    { name: "difference", kind: "number", expects: "a difference other than 0", zeroIsBlank: true },
    {
      name: "power",
      kind: "number",
      expects: "a chance between 0 and 1, such as 0.8",
      above: 0,
      most: 0.9999,
      otherwise: 0.8,
      zeroIsBlank: true,
    },
    {
      name: "confidence",
      kind: "number",
      expects: "a share between 0 and 1, such as 0.95",
      above: 0,
      most: 0.9999,
      otherwise: 0.95,
      zeroIsBlank: true,
    },
  ],
  shape: "one",
  example: {
    call: [1, 0.8],
    answer: 26,
    source: "Cohen 1988, Statistical Power Analysis: 26 a group for d = 0.8, power 0.80, two-sided 0.05",
  },
  answer: shotsNeededFor,
};

/**
 * Shots that each of two builds needs to tell a difference that matters.
 * @customfunction SHOTSNEEDED
 * @helpurl https://localhost:3000/functions.html#SHOTSNEEDED
 * @param {any[][]} sd Spread (SD) of single shots with one build. A 0 counts as blank.
 * @param {any[][]} difference Smallest true difference that matters, in the same unit. A 0 counts as blank.
 * @param {any[][]} [power] Chance of seeing it; 0.8 where left out or 0.
 * @param {any[][]} [confidence] Confidence of the test; 0.95 where left out or 0.
 * @returns {any[][]} Shots with each build.
 */
export function shotsNeeded(
  sd: any[][],
  difference: any[][],
  power?: any[][],
  confidence?: any[][],
): any[][] {
  return answerCells(SHOTSNEEDED, [sd, difference, power, confidence]);
}

import { isProblem, type Problem } from "../outcome/problem.ts";
import type { Cell } from "./cell.ts";
import { callFunction, type FunctionSpec } from "./define-function.ts";

/**
 * Answers a call from the spreadsheet. A problem becomes the platform's own error value, so that the cell shows
 * #VALUE! or #N/A and the sentence stands beside it; a lone problem is thrown, as the platform asks.
 */
export function answerCells(spec: FunctionSpec, raw: readonly unknown[]): any {
  const answer = callFunction(spec, raw);
  if (!Array.isArray(answer)) {
    if (isProblem(answer)) throw errorValue(answer);
    return answer;
  }
  const first = answer[0]?.[0];
  if (answer.length === 1 && answer[0]!.length === 1 && isProblem(first)) throw errorValue(first);
  return answer.map((row) => row.map((cell: Cell) => (isProblem(cell) ? errorValue(cell) : cell)));
}

function errorValue(problem: Problem): unknown {
  const platform = (globalThis as { CustomFunctions?: Partial<typeof CustomFunctions> }).CustomFunctions;
  if (!platform?.Error || !platform.ErrorCode) return new Error(problem.message);
  const { invalidValue, notAvailable } = platform.ErrorCode;
  return new platform.Error(problem.kind === "invalid" ? invalidValue : notAvailable, problem.message);
}

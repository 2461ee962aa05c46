import { invalid, type Problem } from "../outcome/problem.ts";

/** The problem with a confidence level or a probability, or undefined when it lies between 0 and 1. */
export function confidenceProblem(confidence: number, name = "confidence"): Problem | undefined {
  if (confidence > 0 && confidence < 1) return undefined;
  return invalid(`${name} is ${confidence}; it must lie between 0 and 1, for example 0.95.`);
}

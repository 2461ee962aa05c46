import { expect, it } from "vitest";
import { scoreOf } from "./score-of.ts";

const mutants = (...all: ("Killed" | "Timeout" | "Survived" | "NoCoverage" | "Ignored")[]) =>
  all.map((status) => ({ status }));

it("counts what no test reaches as missed, and what was left out not at all", () => {
  expect(scoreOf(mutants("Killed", "Timeout", "Killed", "NoCoverage", "Ignored", "Ignored")).score).toBe(75);
  expect(scoreOf(mutants("Killed", "Survived")).score).toBe(50);
});

it("finds nothing missed where nothing was tried", () => {
  expect(scoreOf(mutants("Ignored")).score).toBe(100);
});

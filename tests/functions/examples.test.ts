import { describe, it } from "vitest";
import { FUNCTIONS } from "../../src/functions/catalogue.ts";
import { callFunction } from "../../src/functions/define-function.ts";
import { expectAnswer } from "./expect-answer.ts";

describe("every function answers its own worked example", () => {
  for (const spec of FUNCTIONS) {
    it(`${spec.id}: ${spec.example.source}`, () => {
      expectAnswer(callFunction(spec, spec.example.call), spec.example.answer);
    });
  }
});

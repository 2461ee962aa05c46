import { expect, test } from "vitest";
import { boundsWords } from "../../src/pane/bounds-words.ts";
import { figuresFor } from "../../src/pane/figures.ts";

test("bounds are rounded inwards, so that each figure named would do", () => {
  // An inch is 2.54 cm by definition: 28 to 50 in are 71.12 to 127 cm.
  expect(boundsWords(28 * 2.54, 50 * 2.54, figuresFor("en-GB"))).toBe("71.2 to 127 would do.");
  expect(boundsWords(28 * 2.54, 50 * 2.54, figuresFor("de-DE"))).toBe("71,2 to 127 would do.");
  expect(boundsWords(1, 40, figuresFor("en-GB"))).toBe("1 to 40 would do.");
});

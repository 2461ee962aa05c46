import { describe, expect, it } from "vitest";
import { wrappedWords } from "../../src/pictures/wrapped-words.ts";

describe("wrappedWords(words, width)", () => {
  it("keeps what fits on one line", () =>
    expect(wrappedWords("95 g high-launch", 200)).toEqual(["95 g high-launch"]));
  it("breaks between words", () =>
    expect(wrappedWords("95 g high-launch", 80)).toEqual(["95 g", "high-launch"]));
  it("cuts a word too long for a line, and what is beyond three lines", () => {
    expect(wrappedWords("extraordinarily", 50)).toEqual(["extrao…"]);
    expect(wrappedWords("one two three four five", 20)).toEqual(["one", "two", "thr…"]);
  });
});

import { expect, test } from "vitest";
import { localWords } from "../../src/sheets/local-words.ts";

const SENTENCE = "Half of its shots with 6.0 land within 3.5 yd, against 10.25 yd with 6.0+.";

test("figures in sentences take the decimal mark of the place", () => {
  expect(localWords(SENTENCE, [], ",")).toBe(
    "Half of its shots with 6,0 land within 3,5 yd, against 10,25 yd with 6,0+.",
  );
  expect(localWords(SENTENCE, [], ".")).toBe(SENTENCE);
});

test("names of builds stay as they are, also where one is part of another or holds signs of a pattern", () => {
  expect(localWords(SENTENCE, ["6.0", "6.0+"], ",")).toBe(
    "Half of its shots with 6.0 land within 3,5 yd, against 10,25 yd with 6.0+.",
  );
});

test("what a person typed stays as it is between quotation marks", () => {
  expect(localWords('"12.3x" is no figure; 12.3 would do.', [], ",")).toBe(
    '"12.3x" is no figure; 12,3 would do.',
  );
});

test("full stops and dates are no decimal marks", () => {
  expect(localWords("Hit 3. Then 4 on 2026-11-25.", [], ",")).toBe("Hit 3. Then 4 on 2026-11-25.");
});

test("a name without letters is no name, and signs of a pattern in one are only signs", () => {
  expect(localWords("1.5 and 2.5", [""], ",")).toBe("1,5 and 2,5");
  expect(localWords("6.0 1.5 and 2.5", ["6.0", "6.0 1.5"], ",")).toBe("6.0 1.5 and 2,5");
  expect(localWords("1.5 (2.5) and 2x5", ["(2.5)"], ",")).toBe("1,5 (2.5) and 2x5");
  expect(localWords("a.b 6x0 6.0", ["6.0"], ",")).toBe("a.b 6x0 6.0");
  expect(localWords('"1.5" 2.5 "" 3.5', [], ",")).toBe('"1.5" 2,5 "" 3,5');
});

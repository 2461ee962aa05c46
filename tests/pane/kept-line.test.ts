import { describe, expect, test } from "vitest";
import { type KeptLine, keptAlso, keptSentence, stillKept } from "../../src/pane/kept-line.ts";

const changed: KeptLine = { row: 4, was: "B\t160", ours: "B\t163", theirs: "B\t162" };
const out: KeptLine = { row: 2, was: "A\t1", ours: null, theirs: "A\t2" };

describe("a line that stayed although its table changed it", () => {
  test("is named with its row and what the table has", () => {
    expect(keptSentence([changed])).toBe(
      "1 line was changed here and in the table; yours stay: row 4 (the table now has B 162).",
    );
    expect(keptSentence([out, { ...changed, theirs: null }])).toBe(
      "2 lines were changed here and in the table; yours stay: " +
        "a row taken out here (the table now has A 2), row 4 (the table has it no more).",
    );
    expect(keptSentence([])).toBe("");
  });

  test("is one of many of which three are named, and a long line is cut", () => {
    const many = keptSentence([changed, changed, changed, changed, changed]);
    expect(many).toMatch(/^5 lines were .* and 2 more\.$/);
    expect(keptSentence([{ ...changed, theirs: "x".repeat(200) }]).length).toBeLessThan(160);
  });

  test("waits no longer once it was edited, taken out, or put right by hand", () => {
    const text = "Build\tCarry\nA\t1\nB\t163";
    expect(stillKept([changed], text)).toEqual([{ ...changed, row: 3 }]);
    expect(stillKept([changed], text.replace("163", "164"))).toEqual([]);
    expect(stillKept([out], text)).toEqual([out]);
    expect(stillKept([out], text.replace("A\t1", "A\t2"))).toEqual([]);
  });

  test("is told of once when the table changes it again", () => {
    const again = { ...changed, was: "B\t162", theirs: "B\t161" };
    expect(keptAlso([changed, out], [again])).toEqual([out, again]);
    expect(keptAlso([changed], [])).toEqual([changed]);
  });
});

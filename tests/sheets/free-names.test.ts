import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { freeAreaName, freeSheetName } from "../../src/sheets/free-names.ts";

// Rules of a sheet's name, as the spreadsheet's help on renaming a worksheet lists them (from memory): at most 31
// letters, none of \ / ? * [ ] :, no apostrophe at either end, never "History".
const SHEET_RULES = /^(?!history$)(?!')[^\\/?*[\]:]{1,31}(?<!')$/i;

describe("freeSheetName(wish, taken)", () => {
  it("is the wish itself where it is free", () => {
    expect(freeSheetName("Shots", ["Comparison"])).toBe("Shots");
  });

  it("counts on where the name is taken in any case", () => {
    expect(freeSheetName("Shots", ["SHOTS", "shots 2"])).toBe("Shots 3");
  });

  it("takes out what no spreadsheet allows in a name", () => {
    expect(freeSheetName("'7/8 iron: [a]*?'", [])).toBe("7 8 iron a");
    expect(freeSheetName("History", [])).toBe("History 2");
    expect(freeSheetName("///", [])).toBe("Sheet");
  });

  it("keeps room for the number in a long name", () => {
    const long = "a very long name of a worksheet, too long";
    const first = freeSheetName(long, []);
    expect(first).toHaveLength(31);
    expect(freeSheetName(long, [first])).toBe(`${first.slice(0, 29).trimEnd()} 2`);
  });

  it("closes gaps, takes apostrophes off both ends only, and cuts at 31 letters without a gap at the end", () => {
    expect(freeSheetName("  a \t\n b  ", [])).toBe("a b");
    expect(freeSheetName("a\u0007b", [])).toBe("a b");
    expect(freeSheetName("''Ann's''", [])).toBe("Ann's");
    expect(freeSheetName("' '", [])).toBe("Sheet");
    expect(freeSheetName(`${"a".repeat(30)} b`, [])).toBe("a".repeat(30));
    expect(freeSheetName("b".repeat(31), [])).toBe("b".repeat(31));
    expect(freeSheetName("history", [])).toBe("history 2");
  });

  it("makes room for a longer number, and leaves no gap before it", () => {
    const nine = "c".repeat(31);
    const taken = [nine, ...Array.from({ length: 8 }, (_, i) => `${"c".repeat(29)} ${i + 2}`)];
    expect(freeSheetName(nine, taken)).toBe(`${"c".repeat(28)} 10`);
    const gap = `${"d".repeat(28)} ee`;
    expect(freeSheetName(gap, [gap])).toBe(`${"d".repeat(28)} 2`);
  });

  it("is free and keeps to the rules, whatever is wished", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), fc.array(fc.string()), (wish, taken) => {
        const first = freeSheetName(wish, taken);
        const second = freeSheetName(wish, [...taken, first]);
        expect(first).toMatch(SHEET_RULES);
        expect(second).toMatch(SHEET_RULES);
        expect([...taken, first].map((name) => name.toLowerCase())).not.toContain(second.toLowerCase());
      }),
    );
  });
});

describe("freeAreaName(wish, taken)", () => {
  it("is letters, digits and underscores, begins with no digit, and counts on where taken", () => {
    expect(freeAreaName("Shots", [])).toBe("Shots");
    expect(freeAreaName("Shots", ["shots", "SHOTS_2"])).toBe("Shots_3");
    expect(freeAreaName("7 iron", [])).toBe("_7_iron");
    expect(freeAreaName("", [])).toBe("_");
    expect(freeAreaName("Ann's list, 2", [])).toBe("Ann_s_list__2");
    expect(freeAreaName("_x9", ["_X9"])).toBe("_x9_2");
    expect(freeAreaName("a7", [])).toBe("a7");
  });
});

import { describe, expect, it } from "vitest";
import { sniffDelimiter } from "../../src/shots/sniff-delimiter.ts";
import { plainLines, splitText } from "../../src/shots/split-text.ts";

describe("plainLines(text)", () => {
  it("takes off the byte order mark and ends every line alike", () => {
    expect(plainLines("\ufeffa\r\nb\rc\nd")).toBe("a\nb\nc\nd");
  });
});

describe("splitText(text, delimiter)", () => {
  it("knows the line each record begins in", () => {
    const { cells, line } = splitText('a,b\n"1\n2","x\n\ny"\nc,d\n', ",");
    expect(cells).toEqual([
      ["a", "b"],
      ["1\n2", "x\n\ny"],
      ["c", "d"],
    ]);
    expect([0, 1, 2].map(line)).toEqual([1, 2, 6]);
  });

  it("keeps every line where a quotation mark is never closed", () => {
    const { cells, looseQuotes } = splitText('"a,b\nc,d', ",");
    expect(cells).toEqual([
      ['"a', "b"],
      ["c", "d"],
    ]);
    expect(looseQuotes).toBe(true);
  });
});

describe("sniffDelimiter(text)", () => {
  it.each([
    ["\t", "Carry\tOffline\n150,3\t-4,5"],
    [";", "Carry;Offline\n150,3;-4,5"],
    ["|", "|Carry|Offline|\n|150,3|-4,5|"],
    [",", 'Carry,Offline,Notes\n150.3,-4.5,"a;b;c"'],
    [",", "Harrow Lane; second bay; May\nCarry,Offline\n150.3,-4.5"],
    [";", "Carry (m, flat);Offline\n150,3;-4,5"],
    ["\t", "Carry\n152,3\n150,1"],
  ])("finds %j by the headings", (delimiter, text) => {
    expect(sniffDelimiter(text)).toBe(delimiter);
  });
});

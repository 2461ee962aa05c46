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

describe("sniffDelimiter(text) where headings do not settle it", () => {
  it("takes the mark under which rows are as wide as the headings, then the one that comes first", () => {
    expect(sniffDelimiter("Carry;Lust,Wind\n150;1\n151;2")).toBe(";");
    expect(sniffDelimiter("Carry,Lust;Wind\n150,1\n151,2")).toBe(",");
    expect(sniffDelimiter("Carry\t,\n150\t,")).toBe("\t");
    expect(sniffDelimiter("a,b\n1,2")).toBe(",");
    expect(sniffDelimiter("")).toBe("\t");
  });

  it("looks at the start of a long text only, and at all of a long first line", () => {
    const rows = "150,3;-4,5\n".repeat(6000);
    expect(sniffDelimiter(`Carry;Offline\n${rows}`)).toBe(";");
    expect(sniffDelimiter(`${"x".repeat(60_000)}\nCarry,Offline`)).toBe("\t");
    expect(sniffDelimiter(`${"x".repeat(49_990)}\nCarry,Offline`)).toBe(",");
  });
});

describe("splitText(text, delimiter, preview)", () => {
  it("takes no blank record for the newline at the end, and keeps blank lines before it", () => {
    expect(splitText("a,b\n\n", ",").cells).toEqual([["a", "b"], [""]]);
    expect(splitText("a,b", ",").cells).toEqual([["a", "b"]]);
  });

  it("counts records as lines where marks are loose or there are none", () => {
    expect([0, 1].map(splitText('"a,b\nc,d', ",").line)).toEqual([1, 2]);
    expect([0, 1].map(splitText("a,b\nc,d", ",").line)).toEqual([1, 2]);
    expect([0, 1, 2].map(splitText('"a\n",b\n"\nc",d\ne,f', ",").line)).toEqual([1, 3, 5]);
  });
});

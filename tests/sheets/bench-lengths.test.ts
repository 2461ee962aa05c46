import { describe, expect, it } from "vitest";
import { benchLengths, setFileLengths } from "../../src/sheets/bench-lengths.ts";

describe("setFileLengths(setText)", () => {
  const unit = (text: string) => setFileLengths(text).unit;

  it("is centimetres where a line of the file says so, with any mark, blanks, quotes and case", () => {
    for (const line of [
      "lengths; cm",
      "lengths,cm",
      "lengths\tcm",
      "lengths|cm",
      '  LENGTHS  ;  " cm "',
      'lengths;"cm"',
      "lengths; centimetres",
    ])
      expect(unit(`grip; 50\n${line}\nclub; length`), line).toBe("cm");
  });

  it("is inches where none does", () => {
    for (const line of [
      "",
      "lengths; in",
      "lengths cm",
      "my lengths; cm",
      "lengths; cmx",
      "lengths; x cm",
      "lengthsx; cm",
    ])
      expect(unit(`grip; 50\n${line}\nclub; length`), line).toBe("in");
  });
});

describe("benchLengths(units)", () => {
  it("shows inches of a rule as they are and says sentences unchanged", () => {
    const { unit, perInch, shown, words } = benchLengths("us");
    expect([unit, perInch, shown(37.0625), words("0.5 in of 3 inches")]).toEqual([
      "in",
      1,
      37.0625,
      "0.5 in of 3 inches",
    ]);
  });

  it("shows inches that are on no rule to a hundredth", () => {
    const { shown } = benchLengths("us");
    // 96.5 cm and 0.5 cm, as a set file may have them; 37 1/64 in.
    expect([shown(96.5 / 2.54), shown(0.5 / 2.54), shown(37.015625)]).toEqual([37.99, 0.2, 37.015625]);
    expect(shown(Number.NaN)).toBeNaN();
  });

  it("shows centimetres to a tenth of a millimetre", () => {
    const { unit, perInch, shown } = benchLengths("metric");
    // An inch is 25.4 mm exactly: 0.0625 in is 1.5875 mm.
    expect([unit, perInch, shown(37), shown(0.0625)]).toEqual(["cm", 2.54, 93.98, 0.16]);
  });

  it("says inches without a figure as centimetres, and leaves those that have one written out", () => {
    const { words } = benchLengths("metric");
    expect(words("in inches, or inches. winches, inchesx")).toBe(
      "in centimetres, or centimetres. winches, inchesx",
    );
    expect(words("about 14 inches and 10.5 in off, 2 in, 3 in")).toBe(
      "about 14 inches and 26.67 cm off, 5.08 cm, 7.62 cm",
    );
  });

  it("leaves what a person typed as it was typed", () => {
    const { words } = benchLengths("metric");
    expect(words('length is "37 in"; it should be inches, more than 0 in.')).toBe(
      'length is "37 in"; it should be centimetres, more than 0 cm.',
    );
  });
});

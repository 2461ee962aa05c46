import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { COMMA, POINT, plainNumber } from "../../src/shots/plain-number.ts";

describe("plainNumber(cell, decimal)", () => {
  it("agrees to the last bit with the language's own reading of any decimal figure", () => {
    const figure = fc.tuple(
      fc.integer({ min: -99_999_999, max: 99_999_999 }),
      fc.integer({ min: 0, max: 9_999_999 }),
    );
    fc.assert(
      fc.property(figure, ([whole, fraction]) => {
        const text = `${whole}.${fraction}`;
        expect(plainNumber(text, POINT)).toBe(Number(text));
        expect(plainNumber(text.replace(".", ","), COMMA)).toBe(Number(text));
      }),
    );
  });

  it("reads the signs that figures carry, and no negative zero", () => {
    expect(plainNumber("-12.3", POINT)).toBe(-12.3);
    expect(plainNumber("+12.3", POINT)).toBe(12.3);
    expect(plainNumber("\u221212.3", POINT)).toBe(-12.3);
    expect(plainNumber("-0.0", POINT)).toBe(0);
    expect(plainNumber(".5", POINT)).toBe(0.5);
    expect(plainNumber("5.", POINT)).toBe(5);
  });

  it("leaves everything else to a closer look", () => {
    for (const cell of [
      "",
      "-",
      ".",
      "1,234",
      "1.2.3",
      "12 ",
      "12L",
      "1e5",
      "0x10",
      "Infinity",
      "1234567890123456",
    ]) {
      expect(plainNumber(cell, POINT)).toBeNaN();
    }
  });
});

describe("a plain number", () => {
  it("may begin with a dash of print, and may have a nought for each side of its mark", () => {
    expect(plainNumber("\u201312.3", POINT)).toBe(-12.3);
    expect(plainNumber("-0.0", POINT)).toBe(0);
    expect(Object.is(plainNumber("-0", POINT), 0)).toBe(true);
    expect(plainNumber("123456789012345", POINT)).toBe(123456789012345);
    expect(plainNumber("0.5", POINT)).toBe(0.5);
    expect(plainNumber("1..5", POINT)).toBeNaN();
    expect(plainNumber(".", POINT)).toBeNaN();
  });
});

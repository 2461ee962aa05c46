import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { headerSignature, headingsOf } from "../../src/shots/header-signature.ts";

describe("the signature of a table's headings", () => {
  test("is the same for other shots under the same headings, whatever case and gaps", () => {
    const one = headerSignature("Build\tBall Speed\tMy dist\nA\t60.1\t150\n");
    expect(one).toBe("build|ball speed|my dist");
    expect(headerSignature("BUILD;Ball  speed;My Dist\r\nB;61,5;148\r\n")).toBe(one);
  });

  test("differs where a column is added, gone or elsewhere", () => {
    const one = headerSignature("Build\tCarry\tSpin\nA\t150\t6000");
    for (const other of [
      "Build\tCarry\nA\t150",
      "Build\tSpin\tCarry\nA\t6000\t150",
      "Build\tCarry\tSpin\tLoft\nA\t1\t2\t3",
    ])
      expect(headerSignature(other)).not.toBe(one);
  });

  test("looks past lines above the headings, and takes a shop's own words", () => {
    expect(headerSignature("Harrow Lane, bay 2\n\nBuild\tCarry\nA\t150")).toBe("build|carry");
    expect(headerSignature("Schaft\tWeite\nA\t150\nB\t151")).toBe("schaft|weite");
  });

  test.each(["", "150\t160\n151\t161", "hello"])("is empty for %j, which has no headings", (text) => {
    expect(headerSignature(text)).toBe("");
  });

  test("never throws, whatever the text", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), (text) => typeof headerSignature(text) === "string"),
    );
  });
});

describe("the headings of a table of a shop's own", () => {
  test("are the first row of words only, of which there are two", () => {
    expect(headingsOf("hello\n1\tWeite\nSchaft\tWeite\nA\t150")).toEqual(["Schaft", "Weite"]);
    expect(headingsOf("\tSchaft\t \tWeite\nA\t150")).toEqual(["", "Schaft", " ", "Weite"]);
    expect(headingsOf("Schaft\t2 Weite\nA\t150")).toEqual([]);
  });

  test("count before them where they are known", () => {
    expect(headingsOf("Schaft und\tWand\nBuild\tCarry\nA\t150")).toEqual(["Build", "Carry"]);
    expect(headingsOf("Build\tCarry\nA\t150")).toEqual(["Build", "Carry"]);
  });

  test("leave no gaps and no bars in the signature, nor blanks at its end, nor more than 2,000 letters", () => {
    expect(headerSignature(" Build \tA|B\tCarry\t\t\nA\t1\t150")).toBe("build|a/b|carry");
    expect(headerSignature(`Build\tCarry\t${"x".repeat(3000)}\nA\t150`)).toHaveLength(2000);
  });
});

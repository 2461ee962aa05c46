import { describe, expect, test } from "vitest";
import { textOfBytes } from "../../src/shots/text-of-bytes.ts";

const words = "Schläger\tWeite\nA\t150";
const latin = Uint8Array.from(words, (letter) => letter.charCodeAt(0));
const wide = (big: boolean) => {
  const bytes = new Uint8Array(2 + 2 * words.length);
  const view = new DataView(bytes.buffer);
  [...`\ufeff${words}`].forEach((letter, i) => {
    view.setUint16(2 * i, letter.charCodeAt(0), !big);
  });
  return bytes;
};

describe("the text of a file", () => {
  test("is the same in UTF-8, with a mark or without, in UTF-16 of either order and in Windows-1252", () => {
    const utf8 = new TextEncoder().encode(words);
    const marked = new TextEncoder().encode(`\ufeff${words}`);
    for (const bytes of [utf8, marked, wide(false), wide(true), latin])
      expect(textOfBytes(bytes)).toBe(words);
  });

  test("is no UTF-16 where only one byte of its mark is there", () => {
    // In Windows-1252 0xff is "ÿ" and 0xfe is "þ" (WHATWG Encoding Standard, index windows-1252).
    expect(textOfBytes(Uint8Array.of(0xff, 0x41))).toBe("ÿA");
    expect(textOfBytes(Uint8Array.of(0xfe, 0x41))).toBe("þA");
    expect(textOfBytes(Uint8Array.of(0x41, 0xfe))).toBe("Aþ");
    expect(textOfBytes(Uint8Array.of(0x41, 0xff))).toBe("Aÿ");
  });

  test("stays UTF-8 where only its beginning is read and that ends in the midst of a letter", () => {
    // "ä" is two bytes of UTF-8, of which the second is missing.
    const cut = new TextEncoder().encode("Carry\nä").slice(0, -1);
    expect(textOfBytes(cut, true)).toBe("Carry\n");
  });
});

import { expect, it } from "vitest";
import { noTable } from "../../src/shots/no-table.ts";
import { textOfBytes } from "../../src/shots/text-of-bytes.ts";

const said = (...bytes: number[]) => noTable(textOfBytes(Uint8Array.from(bytes)))?.message;

it("a workbook that was taken for text is told as a workbook, of the present form and the older one", () => {
  expect(said(0x50, 0x4b, 3, 4, 20, 0, 6)).toMatch(/^This is a workbook .*saved as CSV/);
  expect(said(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1)).toMatch(/^This is a workbook/);
});

it("what no text has tells that it is none", () => {
  expect(said(0x42, 0, 1, 0x43)).toMatch(/^This is no text/);
  // UTF-16 without its mark: every other byte is nought.
  expect(said(...[..."Carry\n150"].flatMap((letter) => [letter.charCodeAt(0), 0]))).toMatch(
    /^This is no text/,
  );
});

it("one such sign in a table does not make it none", () => {
  expect(noTable(`Build\tCarry\n${"A\t150\n".repeat(10)}\0`)).toBeNull();
});

it("a text of blanks is empty, and any other may hold a table", () => {
  expect(noTable(" \n\t ")?.message).toMatch(/^The text is empty/);
  expect(noTable("PK, Carry\n1, 2")).toBeNull();
});

import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { readTableFile } from "../../../src/hosts/file/read-table-file.ts";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx.ts";
import { isProblem } from "../../../src/outcome/problem.ts";
import { sessionWorkbook } from "../../../src/sheets/session-workbook.ts";
import { readShots } from "../../../src/shots/read-shots.ts";
import { answer, refusal } from "../../club/answer.ts";
import { smallSession } from "../../sheets/small-session.ts";

let folder: string;
const at = (name: string) => join(folder, name);
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "read-table-"));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

it("a file that is not there, and a folder, are told in words and not in the system's letters", async () => {
  expect(refusal(await readTableFile(at("none.csv")))).toMatch(
    /^There is no file .*none\.csv; .* would do\.$/,
  );
  expect(refusal(await readTableFile(folder))).toMatch(/ is a folder; .* would do\.$/);
});

it("text is read in the encodings that programs write", async () => {
  await writeFile(at("wide.csv"), Buffer.from("\ufeffCarry °", "utf16le"));
  expect(await readTableFile(at("wide.csv"))).toBe("Carry °");
});

it("a workbook of the older form, or behind a password, is told what to save it as", async () => {
  await writeFile(at("old.xls"), Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]));
  expect(refusal(await readTableFile(at("old.xls")))).toMatch(/older form, or one with a password; saved as/);
});

it("an archive that is no workbook is told so, with what would do", async () => {
  await writeFile(at("odd.xlsx"), Uint8Array.from([0x50, 0x4b, 3, 4, 1, 2]));
  expect(refusal(await readTableFile(at("odd.xlsx")))).toMatch(
    /not be read as an \.xlsx workbook .* would do\.$/,
  );
});

it("a workbook of our own is read from the sheet of its shots, though another one is in front", async () => {
  const session = smallSession();
  const bytes = answer(await writeXlsx(sessionWorkbook(session, null, "today")));
  await writeFile(at("own.xlsx"), bytes);
  const text = answer(await readTableFile(at("own.xlsx"), (sheet) => !isProblem(readShots(sheet))));
  const table = answer(readShots(text));
  expect([...table.build]).toEqual([...session.table.build]);
  expect([...table.keep]).toEqual([...session.table.keep]);
  expect([...table.values.get("carry")!]).toEqual([...session.table.values.get("carry")!]);
});

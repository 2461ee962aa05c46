import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { readFile, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { findLibreOffice } from "./find-libreoffice.ts";

/**
 * Has LibreOffice open an .xlsx file, calculate all its formulas and save it in another format. One conversion runs
 * at a time, in a profile of this process, so that an office that someone has open is left alone.
 */
export function convert(bytes: Uint8Array, format: "xlsx" | "xls" | "pdf"): Promise<Uint8Array> {
  const result = last.then(() => convertNow(bytes, format));
  last = result.catch(() => undefined);
  return result;
}

/** Takes the profile and the files of this process away; the next conversion makes new ones. */
export function tidyUp(): void {
  if (folder !== undefined) rmSync(folder, { recursive: true, force: true });
  folder = undefined;
}

/** Generous, for the first start of a profile on a busy machine. */
export const LIBREOFFICE_TIMEOUT = 60_000;

let last: Promise<unknown> = Promise.resolve();
let folder: string | undefined;

async function convertNow(bytes: Uint8Array, format: "xlsx" | "xls" | "pdf"): Promise<Uint8Array> {
  const office = findLibreOffice();
  if (office === null) throw new Error("LibreOffice is not installed.");
  folder ??= await newFolder();
  const input = join(folder, "in", "workbook.xlsx");
  const output = join(folder, "out", `workbook.${format}`);
  rmSync(output, { force: true });
  await writeFile(input, bytes);
  const profile = `-env:UserInstallation=${pathToFileURL(join(folder, "profile"))}`;
  const target = ["--convert-to", format, "--outdir", join(folder, "out"), input];
  await promisify(execFile)(office, [profile, "--headless", "--norestore", ...target], {
    timeout: LIBREOFFICE_TIMEOUT,
  });
  return readFile(output);
}

async function newFolder(): Promise<string> {
  const made = mkdtempSync(join(tmpdir(), "libreoffice-"));
  process.once("exit", tidyUp);
  for (const each of ["in", "out", join("profile", "user")]) mkdirSync(join(made, each), { recursive: true });
  await writeFile(join(made, "profile", "user", "registrymodifications.xcu"), ALWAYS_RECALCULATE);
  return made;
}

/** "Recalculation on File Load" of Excel 2007 and newer: 0 is "Always". Left alone, answers in the file are believed. */
const ALWAYS_RECALCULATE = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
`;

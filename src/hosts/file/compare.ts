import { readFile, writeFile } from "node:fs/promises";
import { text as readAll } from "node:stream/consumers";
import { comparisonJson } from "../../fitting/comparison-json.ts";
import { DEMO_FACTS, DEMO_TEXT } from "../../fitting/demo.ts";
import { type Session, type SessionFacts, sessionOf } from "../../fitting/session.ts";
import { invalid, isProblem, type Outcome } from "../../outcome/problem.ts";
import { comparisonWorkbook } from "../../sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../sheets/free-names.ts";
import { readShots } from "../../shots/read-shots.ts";
import { type CommandLine, readCommandLine, USAGE } from "./command-line.ts";
import { printComparison } from "./print-comparison.ts";
import { readXlsxText } from "./read-xlsx.ts";
import { writeXlsx } from "./write-xlsx.ts";

/** Bad use, or a table that cannot be read: one line on standard error and this code. */
const BAD_USE = 2;

process.exitCode = await main(process.argv.slice(2));

/** The command line: reads a table of shots, prints the comparison, writes the workbook. Answers the exit code. */
async function main(words: readonly string[]): Promise<number> {
  const line = readCommandLine(words);
  if (isProblem(line)) return refuse(line.message);
  if (line.help) {
    console.log(USAGE);
    return 0;
  }
  const session = await readSession(line);
  if (isProblem(session)) return refuse(session.message);
  if (line.out !== null) {
    const refused = await writeWorkbook(session, line.out);
    if (refused) return refuse(refused);
  }
  console.log(line.json ? JSON.stringify(comparisonJson(session), null, 2) : printComparison(session));
  return 0;
}

function refuse(message: string): number {
  console.error(message.replace(/\s+/g, " "));
  return BAD_USE;
}

async function readSession(line: CommandLine): Promise<Outcome<Session>> {
  const text = await readText(line.file);
  if (isProblem(text)) return text;
  const table = readShots(text);
  if (isProblem(table)) return table;
  const facts: SessionFacts = line.file === null ? DEMO_FACTS : {};
  const session = sessionOf(table, {
    ...facts,
    units: line.units,
    ...(line.goal ? { goal: line.goal } : {}),
    ...(line.baseline === null ? {} : { baseline: line.baseline }),
  });
  if (line.baseline !== null && session.baseline.toLowerCase() !== line.baseline.trim().toLowerCase()) {
    return invalid(
      `--baseline is "${line.baseline}"; it should be one of ${session.builds.map(({ name }) => `"${name}"`).join(", ")}.`,
    );
  }
  return session;
}

async function readText(file: string | null): Promise<Outcome<string>> {
  if (file === null) return DEMO_TEXT;
  if (file === "-") return readAll(process.stdin);
  try {
    const bytes = await readFile(file);
    if (bytes[0] === 0x50 && bytes[1] === 0x4b) return await readXlsxText(new Uint8Array(bytes));
    if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
    const utf8 = new TextDecoder("utf-8").decode(bytes);
    return utf8.includes("\ufffd") ? new TextDecoder("windows-1252").decode(bytes) : utf8;
  } catch (refused) {
    return invalid(`${file} cannot be read: ${(refused as Error).message}.`);
  }
}

async function writeWorkbook(session: Session, out: string): Promise<string | null> {
  const made = new Date().toISOString().slice(0, 16).replace("T", " ");
  const bytes = await writeXlsx(comparisonWorkbook(session, NOTHING_TAKEN, `${made} UTC`));
  if (isProblem(bytes)) return bytes.message;
  try {
    await writeFile(out, bytes);
    return null;
  } catch (refused) {
    return `${out} cannot be written: ${(refused as Error).message}.`;
  }
}

import { writeFile } from "node:fs/promises";
import { text as readAll } from "node:stream/consumers";
import { comparisonJson } from "../../fitting/comparison-json.ts";
import { DEMO_FACTS, DEMO_TEXT } from "../../fitting/demo.ts";
import { filledSession } from "../../fitting/filled-session.ts";
import { type Session, type SessionFacts, sessionOf } from "../../fitting/session.ts";
import { invalid, isProblem, type Outcome } from "../../outcome/problem.ts";
import { type BenchJob, benchJob } from "../../sheets/bench-job.ts";
import { benchWords } from "../../sheets/bench-words.ts";
import { sessionWorkbook } from "../../sheets/session-workbook.ts";
import { readShots } from "../../shots/read-shots.ts";
import { type CommandLine, readCommandLine, USAGE } from "./command-line.ts";
import { fileTrouble } from "./file-trouble.ts";
import { printComparison } from "./print-comparison.ts";
import { readTableFile } from "./read-table-file.ts";
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
  const job = await readJob(line, session);
  if (isProblem(job)) return refuse(job.message);
  for (const warning of job?.warnings ?? []) console.error(`Build: ${benchWords(job!)(warning)}`);
  if (line.out !== null) {
    const refused = await writeWorkbook(session, job, line.out);
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
  const { leftHanded } = line;
  // Of a workbook the first sheet with shots in it, so that one of our own can be brought in again.
  const text = await readText(line.file, (sheet) => !isProblem(readShots(sheet, { leftHanded })));
  if (isProblem(text)) return text;
  const table = readShots(text, { leftHanded });
  if (isProblem(table)) return table;
  const facts: SessionFacts = line.file === null ? DEMO_FACTS : {};
  const session = sessionOf(table, {
    ...facts,
    units: line.units,
    leftHanded,
    ...(line.comma ? { decimalMark: "," } : {}),
    ...(line.goal ? { goal: line.goal } : {}),
    ...(line.baseline === null ? {} : { baseline: line.baseline }),
    ...(line.air ? { air: line.air } : {}),
  });
  if (line.baseline !== null && session.baseline.toLowerCase() !== line.baseline.trim().toLowerCase()) {
    return invalid(
      `--baseline is "${line.baseline}"; it should be one of ${session.builds.map(({ name }) => `"${name}"`).join(", ")}.`,
    );
  }
  return line.fill ? filledSession(session) : session;
}

async function readText(file: string | null, suits: (text: string) => boolean): Promise<Outcome<string>> {
  if (file === null) return DEMO_TEXT;
  return file === "-" ? readAll(process.stdin) : readTableFile(file, suits);
}

/** The chosen build's set worked out, by the set file where there is one; null where no build was chosen. */
async function readJob({ choose, set }: CommandLine, session: Session): Promise<Outcome<BenchJob | null>> {
  if (choose === null) return null;
  if (set === null) return named("--choose", benchJob(session, choose, null));
  const text = await readTableFile(set);
  return isProblem(text) ? text : named(`--choose "${choose}" --set ${set}`, benchJob(session, choose, text));
}

function named<T>(words: string, outcome: Outcome<T>): Outcome<T> {
  return isProblem(outcome) ? { ...outcome, message: `${words}: ${outcome.message}` } : outcome;
}

async function writeWorkbook(session: Session, job: BenchJob | null, out: string): Promise<string | null> {
  const made = new Date().toISOString().slice(0, 16).replace("T", " ");
  const bytes = await writeXlsx(sessionWorkbook(session, job, `${made} UTC`));
  if (isProblem(bytes)) return bytes.message;
  try {
    await writeFile(out, bytes);
    return null;
  } catch (refused) {
    return fileTrouble("write", out, refused);
  }
}

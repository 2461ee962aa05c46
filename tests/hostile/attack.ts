import { writeXlsx } from "../../src/hosts/file/write-xlsx.ts";
import { type Draw, drawFrom } from "./draw.ts";
import { faultsOfReading } from "./faults-of-reading.ts";
import { faultsOfJson, faultsOfWorkbook, hostilePlan, hostileSession } from "./faults-of-workbook.ts";
import { hostileTable } from "./hostile-table.ts";

/** What a run of hostile tables came to. */
export interface Attack {
  readonly inputs: number;
  /** Inputs in which the reader found shots; to all others it answered a sentence. */
  readonly tables: number;
  /** Of these, those compared, made into sheets, and written as a file. */
  readonly compared: number;
  readonly sheets: number;
  readonly files: number;
  readonly longestMs: number;
  /** The seed of the input and what was wrong. */
  readonly faults: readonly string[];
}

/** Of tables, one in so many goes further, as each step costs ten times the one before. */
const COMPARED = 10;
const SHEETS = 40;
const FILES = 400;

/**
 * An answer that takes longer counts as a hang: the largest inputs have a megabyte. Processor time, for a clock on the
 * wall also counts what else the machine does.
 */
const HANG_MS = 5000;

/** Hostile tables by seed, from one on: each through the reader, some through all that follows. Never throws. */
export async function attack(inputs: number, from = 0): Promise<Attack> {
  const faults: string[] = [];
  const count = { tables: 0, compared: 0, sheets: 0, files: 0, longestMs: 0 };
  for (let seed = from; seed < from + inputs; seed++) {
    const began = process.cpuUsage();
    try {
      faults.push(...(await one(seed, count)).map((fault) => `input ${seed}: ${fault}`));
    } catch (error) {
      faults.push(`input ${seed}: threw ${error instanceof Error ? error.stack : String(error)}`);
    }
    const { user, system } = process.cpuUsage(began);
    const took = (user + system) / 1000;
    if (took > HANG_MS) faults.push(`input ${seed}: took ${Math.round(took)} ms`);
    count.longestMs = Math.max(count.longestMs, took);
  }
  return { inputs, ...count, faults };
}

type Counts = { tables: number; compared: number; sheets: number; files: number };

async function one(seed: number, count: Counts): Promise<string[]> {
  const draw: Draw = drawFrom(seed);
  const { table, faults } = faultsOfReading(hostileTable(draw), draw.once(2));
  if (!table) return [...faults];
  const found = [...faults];
  const place = count.tables++;
  const session = hostileSession(table, draw);
  if (place % COMPARED === 0) {
    count.compared++;
    found.push(...faultsOfJson(session));
  }
  if (place % SHEETS === 0) {
    count.sheets++;
    found.push(...faultsOfWorkbook(session, draw));
  }
  if (place % FILES === 0) {
    count.files++;
    // A sentence is a fair answer, an exception is none: a cell of a megabyte does not fit any file.
    await writeXlsx(hostilePlan(session, draw));
  }
  return found;
}

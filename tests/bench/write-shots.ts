import exceljs from "exceljs";
import { sessionOf } from "../../src/fitting/session.ts";
import { writeXlsx } from "../../src/hosts/file/write-xlsx.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import type { SheetPlan } from "../../src/sheets/plan.ts";
import { shotsSheet } from "../../src/sheets/shots-sheet.ts";
import { measuredTable } from "./measured-table.ts";

/** What a child process tells of one write: `tsx write-shots.ts own|exceljs|neither SHOTS`. */
export interface Written {
  readonly ms: number;
  readonly bytes: number;
  /** The most memory the process ever held. */
  readonly peakMb: number;
  /** What it held before the write began. */
  readonly beforeMb: number;
}

const [, , how, shots] = process.argv;
const sheet = shotsSheet(sessionOf(measuredTable(Number(shots))), "Shots", "Shots", new Map());
const beforeMb = process.memoryUsage().rss / 2 ** 20;
const before = process.cpuUsage();
const bytes = how === "own" ? await byOwn() : how === "exceljs" ? await byExceljs(sheet) : 0;
const { user, system } = process.cpuUsage(before);
const peakMb = process.resourceUsage().maxRSS / 1024;
console.log(JSON.stringify({ ms: (user + system) / 1000, bytes, peakMb, beforeMb } satisfies Written));

async function byOwn(): Promise<number> {
  const written = await writeXlsx({ sheets: [sheet], names: [], active: sheet.name });
  if (isProblem(written)) throw new Error(written.message);
  return written.length;
}

/** The same values and number formats; looks, ticks, the table and its conditions are left out in its favour. */
async function byExceljs({ name, blocks, formats }: SheetPlan): Promise<number> {
  const workbook = new exceljs.Workbook();
  const worksheet = workbook.addWorksheet(name);
  for (const { area, format } of formats) {
    for (let at = 0; at < area.columns; at++) worksheet.getColumn(area.column + at + 1).numFmt = format;
  }
  for (const { row, cells } of blocks) {
    while (worksheet.rowCount < row) worksheet.addRow([]);
    worksheet.addRows(cells as unknown[][]);
  }
  return (await workbook.xlsx.writeBuffer()).byteLength;
}

import { expect, test } from "vitest";
import { comparisonJson } from "../../src/fitting/comparison-json.ts";
import type { Session } from "../../src/fitting/session.ts";
import { writeXlsx } from "../../src/hosts/file/write-xlsx.ts";
import { comparisonWorkbook } from "../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import type { WorkbookPlan } from "../../src/sheets/plan.ts";
import { answer } from "../club/answer.ts";
import { cellAt, findText } from "../sheets/cell-at.ts";
import { demoSession } from "../sheets/demo-session.ts";
import { oddSession } from "../sheets/odd-session.ts";
import { typedIn } from "../sheets/typed-in.ts";
import { disagreements, figuresOfJson, figuresOfWorkings } from "../sheets/workings-figures.ts";
import { LIBREOFFICE_TIMEOUT } from "./convert.ts";
import { describeWithLibreOffice } from "./describe-with-libreoffice.ts";
import { pdfToPng } from "./pdf-to-png.ts";
import { type Answers, recalculate } from "./recalculate.ts";
import { toPdf } from "./to-pdf.ts";

const TIMEOUT = 2 * LIBREOFFICE_TIMEOUT;
const SESSIONS: [string, Session][] = [
  ["the demo session", demoSession()],
  ["a table with odd habits", oddSession()],
];

function planOf(session: Session): WorkbookPlan {
  return comparisonWorkbook(session, NOTHING_TAKEN, "2026-11-25 10:00 UTC");
}

async function calculated(plan: WorkbookPlan): Promise<Map<string, Answers>> {
  return recalculate(answer(await writeXlsx(plan)));
}

/** The session with these shots left out, as if they had been unticked. */
function without(session: Session, shots: readonly number[]): Session {
  const keep = session.table.keep.map((kept, shot) => kept && !shots.includes(shot));
  return { ...session, table: { ...session.table, keep } };
}

/** Cells of which the answer is not what the plan says it is, told in words. */
function surprises(plan: WorkbookPlan, workbook: Map<string, Answers>): string[] {
  return plan.sheets.flatMap((sheet) =>
    sheet.blocks.flatMap(({ row, column, cells }) =>
      cells.flatMap((line, i) =>
        line.flatMap((cell, j) => {
          const planned = (typeof cell === "object" && cell !== null ? cell.value : cell) ?? "";
          const found = workbook.get(sheet.name)?.[row + i]?.[column + j] ?? "";
          const same =
            typeof planned === "number" && typeof found === "number"
              ? Math.abs(found - planned) <= 1e-9 * Math.max(Math.abs(planned), 1e-3)
              : found === planned;
          return same ? [] : [`${sheet.name} ${row + i + 1}, ${column + j + 1}: ${found} for ${planned}`];
        }),
      ),
    ),
  );
}

describeWithLibreOffice("the comparison workbook in LibreOffice", () => {
  test.each(SESSIONS)(
    "of %s calculates every formula to its answer in the plan, and agrees with --json to nine digits",
    async (_, session) => {
      const plan = planOf(session);
      const workbook = await calculated(plan);
      expect(surprises(plan, workbook)).toEqual([]);
      const errors = [...workbook.values()].flat(2).filter((cell) => /^(#|Err:)/.test(String(cell)));
      expect(errors).toEqual([]);
      const figures = figuresOfWorkings(workbook.get("Workings")!);
      expect(figures.size).toBeGreaterThan(50);
      expect(disagreements(figures, figuresOfJson(comparisonJson(session)), 1e-9)).toEqual([]);
    },
    TIMEOUT,
  );

  test(
    "follows when two shots are unticked, and says that the sentences do not",
    async () => {
      const session = demoSession();
      const plan = planOf(session);
      const shots = plan.sheets.find(({ name }) => name === "Shots")!;
      const first = findText(shots, "Keep").row + 1;
      const unticked = typedIn(
        plan,
        "Shots",
        [3, 16].map((shot) => [first + shot, 0, false]),
      );
      const workbook = await calculated(unticked);
      const wanted = figuresOfJson(comparisonJson(without(session, [3, 16])));
      const figures = figuresOfWorkings(workbook.get("Workings")!);
      expect(disagreements(figures, wanted, 1e-9)).toEqual([]);
      expect(disagreements(figures, figuresOfJson(comparisonJson(session)), 1e-9).length).toBeGreaterThan(50);
      const sentences = workbook.get("Comparison")!.flat().join("\n");
      expect(sentences).toContain("SHOTS CHANGED SINCE");
      expect(sentences).not.toContain("have not changed since");
    },
    TIMEOUT,
  );

  test(
    "takes sorted shots for the same shots, in its figures as in its sentences",
    async () => {
      const session = oddSession();
      const plan = planOf(session);
      const sheets = plan.sheets.map((sheet) => ({
        ...sheet,
        blocks: sheet.blocks.map((block) =>
          sheet.name === "Shots" && block.cells.length === session.table.size
            ? { ...block, cells: [...block.cells].reverse() }
            : block,
        ),
      }));
      expect(sheets).not.toEqual(plan.sheets);
      const workbook = await calculated({ ...plan, sheets });
      const figures = figuresOfWorkings(workbook.get("Workings")!);
      expect(disagreements(figures, figuresOfJson(comparisonJson(session)), 1e-9)).toEqual([]);
      expect(workbook.get("Comparison")!.flat().join("\n")).toContain("have not changed since");
    },
    TIMEOUT,
  );

  test.each([
    ["a tenth of a yard in one shot", "Offline (yd)", 1.5],
    ["a shot given to another build of a name as long", "Build", "105 g mid-launch"],
  ])(
    "notices %s",
    async (_, heading, typed) => {
      const plan = planOf(demoSession());
      const shots = plan.sheets.find(({ name }) => name === "Shots")!;
      const { row, column } = findText(shots, heading);
      const before = cellAt(shots, row + 1, column);
      expect(before).toBe(heading === "Build" ? "95 g high-launch" : 1.4);
      if (heading === "Build") expect(String(typed)).toHaveLength(String(before).length);
      const workbook = await calculated(typedIn(plan, "Shots", [[row + 1, column, typed]]));
      expect(workbook.get("Comparison")!.flat().join("\n")).toContain("SHOTS CHANGED SINCE");
    },
    TIMEOUT,
  );

  test.each(SESSIONS)(
    "of %s prints Comparison and Player on a page each",
    async (_, session) => {
      const plan = planOf(session);
      // LibreOffice prints even a hidden sheet where that has a print area of its own.
      const sheets = plan.sheets.map(({ print, ...sheet }) =>
        ["Comparison", "Player"].includes(sheet.name) && print
          ? { ...sheet, print }
          : { ...sheet, hidden: true },
      );
      const pages = await pdfToPng(await toPdf(answer(await writeXlsx({ ...plan, sheets }))), 20);
      expect(pages).toHaveLength(2);
    },
    TIMEOUT,
  );
});

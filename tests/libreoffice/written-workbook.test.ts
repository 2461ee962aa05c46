import { expect, test } from "vitest";
import { writeXlsx } from "../../src/hosts/file/write-xlsx.ts";
import { isProblem } from "../../src/outcome/problem.ts";
import { overlap } from "../../src/sheets/overlap.ts";
import type { CellValue, SheetPlan, WorkbookPlan } from "../../src/sheets/plan.ts";
import { spillsOf } from "../../src/sheets/spills.ts";
import { planOfCells } from "../sheets/plan-of-cells.ts";
import { AWKWARD_TEXTS, samplePlan } from "../sheets/sample-plan.ts";
import { LIBREOFFICE_TIMEOUT } from "./convert.ts";
import { describeWithLibreOffice } from "./describe-with-libreoffice.ts";
import { pdfToPng } from "./pdf-to-png.ts";
import { type Answers, recalculate } from "./recalculate.ts";
import { toPdf } from "./to-pdf.ts";

async function written(plan: WorkbookPlan): Promise<Uint8Array> {
  const bytes = await writeXlsx(plan);
  if (isProblem(bytes)) throw new Error(bytes.message);
  return bytes;
}

async function answersOf(plan: WorkbookPlan, sheet = "Cells"): Promise<Answers> {
  return (await recalculate(await written(plan))).get(sheet)!;
}

const isFilled = (sheet: SheetPlan, row: number, column: number) =>
  spillsOf(sheet).some(({ area }) => overlap(area, { row, column, rows: 1, columns: 1 }));

const TIMEOUT = 2 * LIBREOFFICE_TIMEOUT;

describeWithLibreOffice("a written workbook in LibreOffice", () => {
  test(
    "calculates to the answers that the plan gave, to 13 digits",
    async () => {
      const workbook = await recalculate(await written(samplePlan()));
      for (const sheet of samplePlan().sheets) {
        for (const { area, answers } of spillsOf(sheet)) {
          const found = workbook.get(sheet.name)!.slice(area.row, area.row + area.rows);
          expect(found.map((line) => line.slice(area.column, area.column + area.columns))).toEqual(answers);
        }
        for (const { row, column, cells } of sheet.blocks) {
          cells.forEach((line, i) => {
            line.forEach((value, j) => {
              const answer = workbook.get(sheet.name)?.[row + i]?.[column + j] ?? null;
              // A cell that a formula fills is empty in the plan; above it was held to its answer.
              if (value === null && isFilled(sheet, row + i, column + j)) return;
              const planned = typeof value === "object" && value !== null ? value.value : value;
              if (typeof planned !== "number") expect(answer).toBe(planned);
              else expect(Math.abs(Number(answer) - planned)).toBeLessThanOrEqual(1e-13 * Math.abs(planned));
            });
          });
        }
      }
    },
    TIMEOUT,
  );

  test(
    "is calculated afresh, so that a wrong answer in the file does not pass unseen",
    async () => {
      const wrong: CellValue = { formula: "6*7", value: 41 };
      const error: CellValue = { formula: "NA()", value: 1 };
      expect(await answersOf(planOfCells([[wrong, error]]))).toEqual([[42, "#N/A"]]);
    },
    TIMEOUT,
  );

  test(
    "fills the cells of a formula that answers several, and both ways for a spreadsheet that does not",
    async () => {
      const spill: CellValue = { formula: "TRANSPOSE(A2:A4*2)", value: 0, spills: [[0, 0, 0]] };
      const part: CellValue = { formula: "INDEX(INDEX(TRANSPOSE(A2:A4*2),0,0),1,3)", value: 0 };
      const answers = await answersOf(planOfCells([[spill], [5], [6], [7], [part]]));
      expect(answers[0]).toEqual([10, 12, 14]);
      expect(answers[4]![0]).toBe(14);
    },
    TIMEOUT,
  );

  test(
    "knows the newer functions by the prefixes that we write",
    async () => {
      // Source: NIST/SEMATECH e-Handbook of Statistical Methods, tables 1.3.6.7.1 to 1.3.6.7.4: critical values of the
      // normal, Student's t, F and chi-square distributions. By arithmetic: the standard deviation of eight marks is 2,
      // the lower quartile of five neighbours is the second, and a symmetric beta distribution has its median at 0.5.
      const published: [string, number, number][] = [
        ["NORM.S.INV(0.975)", 1.96, 2],
        ["T.INV.2T(0.05,10)", 2.228, 3],
        ["T.INV(0.95,5)", 2.015, 3],
        ["F.INV.RT(0.05,2,10)", 4.103, 3],
        ["CHISQ.INV.RT(0.05,3)", 7.815, 3],
        ["STDEV.S(2,4,4,4,5,5,7,9)*SQRT(7/8)", 2, 12],
        ["STDEV.P(2,4,4,4,5,5,7,9)", 2, 12],
        ["PERCENTILE.INC({1,2,3,4,5},0.25)", 2, 12],
        ["CONFIDENCE.T(0.05,1,11)*SQRT(11)", 2.228, 3],
        ["BETA.INV(0.5,3,3)", 0.5, 12],
      ];
      const formulas = published.map(([formula]): CellValue[] => [{ formula, value: 0 }]);
      const answers = await answersOf(planOfCells(formulas));
      published.forEach(([, value, digits], i) => {
        expect(answers[i]![0]).toBeCloseTo(value, digits);
      });
    },
    TIMEOUT,
  );

  test(
    "shows text as it was, whatever it looks like",
    async () => {
      const texts = [...AWKWARD_TEXTS, "_x000D_", "tab\there", "]]>", "&amp;"];
      expect(await answersOf(planOfCells(texts.map((text) => [text])))).toEqual(texts.map((text) => [text]));
    },
    TIMEOUT,
  );

  test(
    "prints the comparison on one page, the shots on another and the hidden sheet on none",
    async () => {
      expect(await pdfToPng(await toPdf(await written(samplePlan())), 20)).toHaveLength(2);
    },
    TIMEOUT,
  );
});

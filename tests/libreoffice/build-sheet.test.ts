import { expect, test } from "vitest";
import { pointsOfCode } from "../../src/club/points-of-code.ts";
import { writeXlsx } from "../../src/hosts/file/write-xlsx.ts";
import { benchWorkbook } from "../../src/sheets/bench-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import type { CellValue, WorkbookPlan } from "../../src/sheets/plan.ts";
import { pointsFormula } from "../../src/sheets/swingweight-formula.ts";
import { answer } from "../club/answer.ts";
import { SET_TEXT } from "../sheets/bench-set.ts";
import { findText } from "../sheets/cell-at.ts";
import { demoSession } from "../sheets/demo-session.ts";
import { planOfCells } from "../sheets/plan-of-cells.ts";
import { typedIn } from "../sheets/typed-in.ts";
import { LIBREOFFICE_TIMEOUT } from "./convert.ts";
import { describeWithLibreOffice } from "./describe-with-libreoffice.ts";
import { pdfToPng } from "./pdf-to-png.ts";
import { type Answers, recalculate } from "./recalculate.ts";
import { toPdf } from "./to-pdf.ts";

const TIMEOUT = 2 * LIBREOFFICE_TIMEOUT;

function planFor(setText: string | null): WorkbookPlan {
  return answer(
    benchWorkbook(demoSession(), "105 g mid-launch", setText, NOTHING_TAKEN, "2026-11-25 10:00 UTC"),
  );
}

async function calculated(plan: WorkbookPlan, sheet = "Build"): Promise<Answers> {
  return (await recalculate(answer(await writeXlsx(plan)))).get(sheet)!;
}

function errorsIn(answers: Answers): unknown[] {
  return answers.flat().filter((cell) => typeof cell === "string" && /^(#|Err:)/.test(cell));
}

/** Measured figures of six clubs: shaft, length, swingweight, total, loft, lie. Invented; off where it says so below. */
const MEASURED: readonly (readonly CellValue[])[] = [
  [105.4, 38.1, "D3.2", 409, 26.2, 61.2],
  [107.1, 37.5, "d0,8", 410.2, 31.5, 61.4],
  [104.9, 37, "D2", 420.5, 34, 62],
  [null, 36.3, "X1", null, "soft", 64],
  [105, 48.5, "D2.3", 435, 41, 62],
  [null, null, null, null, null, null],
];
/** By arithmetic from the usual set's targets and tolerances: 1 g, 1/16 in, half a point, 3 g, half a degree. */
const MARKS = [
  ["pass", "adjust", "adjust", "pass", "pass", "pass"],
  ["adjust", "pass", "adjust", "adjust", "adjust", "pass"],
  ["pass", "pass", "pass", "pass", "pass", "pass"],
  [null, "adjust", null, null, null, "adjust"],
  ["pass", "adjust", "pass", "pass", "adjust", "adjust"],
  [null, null, null, null, null, null],
];

describeWithLibreOffice("the Build sheet in LibreOffice", () => {
  test(
    "marks what is off when measured figures are typed in, says what to do, and shows no error",
    async () => {
      const plan = planFor(null);
      const sheet = plan.sheets[0]!;
      const { row, column } = findText(sheet, "Target");
      const typed = MEASURED.flatMap((line, club) =>
        line.map((value, figure) => [row + 1 + club, column + 4 * figure + 1, value] as const),
      );
      const answers = await calculated(typedIn(plan, "Build", typed));
      const marks = MARKS.map((line, club) =>
        line.map((_, figure) => answers[row + 1 + club]?.[column + 4 * figure + 3] || null),
      );
      expect(marks).toEqual(MARKS);
      expect(errorsIn(answers)).toEqual([]);
      const difference = (club: number, figure: number) => answers[row + 1 + club]![column + 4 * figure + 2];
      expect(difference(0, 2)).toBeCloseTo(1.2, 9);
      expect(difference(1, 2)).toBeCloseTo(-1.2, 9);
      expect(difference(3, 2)).toBe("code?");
      expect(difference(3, 4)).toBe("number?");
      const adjust = findText(sheet, "Add at head, g");
      // By arithmetic: 1.2 points of 1.75 in-oz over 23.5 in from the fulcrum to the 6-iron's end, in grams.
      const grams = (1.2 * 1.75 * 28.349523125) / (37.5 - 14);
      expect(answers[adjust.row + 2]![adjust.column]).toBeCloseTo(grams, 9);
      const words = (club: number) =>
        answers[adjust.row + 1 + club]![findText(sheet, "What to do, in this order").column];
      expect(words(0)).toBe("Cut 0.1 in off the butt. Then measure swingweight again. 4 of 6 pass.");
      expect([answers[adjust.row + 1]![adjust.column] || "", words(3)]).toEqual([
        "",
        "Extend the butt 0.2 in. Bend 1.5° flatter. 0 of 2 pass.",
      ]);
      expect(words(1)).toBe(
        "Take a shaft 2.1 g lighter. Add 2.5 g at the head: tip weight or tape. Bend 1.5° stronger. Total is 3.9 g under: weigh the parts again. 2 of 6 pass.",
      );
      expect(words(2)).toBe("6 of 6 pass.");
      expect(words(4)).toMatch(/^Length is outside the Rules of Golf\. Cut 12\.5 in/);
      expect(words(5) || "").toBe("");
    },
    TIMEOUT,
  );

  test(
    "marks by the tolerances that stand at the top",
    async () => {
      const plan = planFor(null);
      const sheet = plan.sheets[0]!;
      const { row, column } = findText(sheet, "Target");
      const tolerance = findText(sheet, "Swingweight ±");
      const cells = [
        [row + 1, column + 9, "D3.2"],
        [tolerance.row, tolerance.column + 2, 1.2],
      ] as const;
      const answers = await calculated(typedIn(plan, "Build", cells));
      expect(answers[row + 1]![column + 11]).toBe("pass");
    },
    TIMEOUT,
  );

  test(
    "calculates untouched to what the plan says, without an error or a mark, set file and all",
    async () => {
      for (const setText of [null, SET_TEXT]) {
        const plan = planFor(setText);
        const answers = await calculated(plan);
        expect(errorsIn(answers)).toEqual([]);
        for (const { row, column, cells } of plan.sheets[0]!.blocks) {
          cells.forEach((line, i) => {
            line.forEach((cell, j) => {
              if (typeof cell !== "object" || cell === null) return;
              const found = answers[row + i]?.[column + j] ?? "";
              if (typeof cell.value === "number") expect(found).toBeCloseTo(cell.value, 9);
              else expect(found).toBe(cell.value);
            });
          });
        }
      }
    },
    TIMEOUT,
  );

  test(
    "reads a swingweight as our own functions do",
    async () => {
      const codes = [
        "D2.3",
        "d2,3",
        " D 2 ",
        "A0",
        "G9.9",
        "C9.25",
        "D2.",
        "D12",
        "H1",
        "D",
        "2D",
        "D-1",
        "D2.-3",
        "D2.3x",
        "",
        "D2x",
      ];
      const cells = codes.map((code, i): CellValue[] => [
        code,
        { formula: `IFERROR(${pointsFormula(`A${i + 1}`)},"none")`, value: "" },
      ]);
      const answers = await calculated(planOfCells(cells), "Cells");
      codes.forEach((code, i) => {
        const ours = pointsOfCode(code);
        if (typeof ours === "number") expect(answers[i]![1]).toBeCloseTo(ours, 9);
        else expect([code, answers[i]![1]]).toEqual([code, "none"]);
      });
    },
    TIMEOUT,
  );

  test(
    "prints on one page, a set of fourteen clubs too",
    async () => {
      const clubs = Array.from({ length: 14 }, (_, i) => `${i + 1}; ${45 - i * 0.7}; ${10 + i * 3}; 58\n`);
      const many = `target; swingweight; D2\nshafts; 80; 2\ngrip; 50\nclub; length; loft; lie\n${clubs.join("")}`;
      for (const setText of [SET_TEXT, many]) {
        expect(await pdfToPng(await toPdf(answer(await writeXlsx(planFor(setText)))), 20)).toHaveLength(1);
      }
    },
    TIMEOUT,
  );
});

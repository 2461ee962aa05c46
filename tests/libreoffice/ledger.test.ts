import { expect, test } from "vitest";
import { writeXlsx } from "../../src/hosts/file/write-xlsx.ts";
import { answer } from "../ledger/demo-rows.ts";
import { ledgerWorkbook } from "../ledger/ledger-workbook.ts";
import { LIBREOFFICE_TIMEOUT } from "./convert.ts";
import { describeWithLibreOffice } from "./describe-with-libreoffice.ts";
import { recalculate } from "./recalculate.ts";

describeWithLibreOffice("the ledger in LibreOffice", () => {
  test(
    "has every cell of its tables and of the Shop sheet as planned, days as days and texts as texts",
    async () => {
      const plan = ledgerWorkbook();
      const found = await recalculate(answer(await writeXlsx(plan)));
      let figures = 0;
      for (const { name, blocks } of plan.sheets) {
        for (const { row, column, cells } of blocks) {
          for (const [r, line] of cells.entries()) {
            for (const [c, planned] of line.entries()) {
              const there = found.get(name)?.[row + r]?.[column + c] ?? null;
              const where = `${name}, row ${row + r + 1}, column ${column + c + 1}`;
              if (typeof planned === "number") {
                figures++;
                expect(Math.abs(Number(there) - planned), where).toBeLessThanOrEqual(
                  1e-13 * Math.abs(planned),
                );
              } else expect(there, where).toBe(planned);
            }
          }
        }
      }
      expect(figures).toBeGreaterThan(500);
    },
    2 * LIBREOFFICE_TIMEOUT,
  );
});

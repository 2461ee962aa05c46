import { describe, expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { comparisonWorkbook } from "../../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../../src/sheets/free-names.ts";
import { officeHost } from "../../office-host/office-host.ts";
import { MOST_BYTES } from "../../office-host/service.ts";
import { demoOfSize } from "./demo-of-size.ts";

describe("a whole comparison", { timeout: 120_000 }, () => {
  test.each([12, 1_000, 100_000])(
    "of %i shots takes few requests, each as full as the service allows",
    async (shots) => {
      const { requests } = officeHost();
      const session = demoOfSize(shots);
      const plan = comparisonWorkbook(session, NOTHING_TAKEN, "14 May 2026, 10:30");
      expect(await excelHost().write(plan)).toMatchObject({ sheets: ["Comparison", "Player", "Shots"] });
      const bytes = requests.reduce((sum, request) => sum + request.bytes, 0);
      const bare = JSON.stringify(plan.sheets.map(({ blocks }) => blocks.map(({ cells }) => cells))).length;
      console.log(
        `comparison of ${shots} shots: ${requests.length} requests, ${bytes} bytes, the bare values ${bare}`,
      );
      expect(session.table.size).toBe(shots);
      expect(Math.max(...requests.map((request) => request.bytes))).toBeLessThan(MOST_BYTES);
      // A look at what stands and the library's tidying up; between them what needs no more than one load takes one.
      const loads = requests.slice(1, -1);
      if (bytes < 0.75 * MOST_BYTES) expect(loads).toHaveLength(1);
      else expect(loads.length).toBeLessThanOrEqual(Math.ceil(bytes / (0.5 * MOST_BYTES)));
    },
  );
});

import { describe, expect, test } from "vitest";
import { DEMO_FACTS, DEMO_TEXT } from "../../../src/fitting/demo.ts";
import { sessionOf } from "../../../src/fitting/session.ts";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { comparisonWorkbook } from "../../../src/sheets/comparison-workbook.ts";
import { NOTHING_TAKEN } from "../../../src/sheets/free-names.ts";
import { readShots } from "../../../src/shots/read-shots.ts";
import { answer } from "../../club/answer.ts";
import { officeHost } from "../../office-host/office-host.ts";
import { MOST_BYTES } from "../../office-host/service.ts";

/** The demo session with so many shots: its own, again and again, each time a tenth further. */
function sessionOfSize(shots: number) {
  const [header, ...rows] = DEMO_TEXT.trim().split("\n");
  const lines = Array.from({ length: shots }, (_, shot) => {
    const round = Math.floor(shot / rows.length);
    return rows[shot % rows.length]!.replace(/\d+\.\d+/g, (figure) =>
      (Number(figure) + (round % 7) / 10).toFixed(1),
    );
  });
  return sessionOf(answer(readShots([header, ...lines].join("\n"))), DEMO_FACTS);
}

describe("a whole comparison", { timeout: 120_000 }, () => {
  test.each([12, 1_000, 100_000])(
    "of %i shots takes few requests, each as full as the service allows",
    async (shots) => {
      const { requests } = officeHost();
      const session = sessionOfSize(shots);
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

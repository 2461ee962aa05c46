import { expect, test } from "vitest";
import { excelHost } from "../../../src/hosts/excel/excel-host.ts";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx.ts";
import { benchWorkbook } from "../../../src/sheets/bench-workbook.ts";
import { answer } from "../../club/answer.ts";
import { contentsOfPlan } from "../../contents-of-plan.ts";
import { contentsOfOfficeHost } from "../../office-host/contents-of-office-host.ts";
import { officeHost } from "../../office-host/office-host.ts";
import { SET_TEXT } from "../../sheets/bench-set.ts";
import { demoSession } from "../../sheets/demo-session.ts";
import { contentsOfXlsx } from "../file/contents-of-xlsx.ts";
import { comparableContents } from "./comparable-contents.ts";

test("the Build sheet written in the spreadsheet is the plan, and the one that the file host writes", async () => {
  const host = officeHost();
  const taken = answer(await excelHost().taken());
  const plan = answer(
    benchWorkbook(demoSession(), "105 g mid-launch", SET_TEXT, taken, "2026-11-25 10:00 UTC"),
  );
  expect(await excelHost().write(plan)).toMatchObject({ sheets: ["Build"], notes: [] });
  const written = comparableContents(contentsOfOfficeHost(host.workbook, (name) => name !== "Sheet1"));
  expect(written).toEqual(comparableContents(contentsOfPlan(plan)));
  const file = await contentsOfXlsx(answer(await writeXlsx(plan)));
  expect(written).toEqual(comparableContents(file));
});

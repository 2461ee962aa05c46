import { writeFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { cellName } from "../../src/sheets/a1.ts";
import { benchWorkbook } from "../../src/sheets/bench-workbook.ts";
import { NOTHING_TAKEN } from "../../src/sheets/free-names.ts";
import { answer } from "../club/answer.ts";
import { contentsOfPlan } from "../contents-of-plan.ts";
import { SET_TEXT } from "../sheets/bench-set.ts";
import { findText } from "../sheets/cell-at.ts";
import { demoSession } from "../sheets/demo-session.ts";
import { aroundPage } from "./around-page.ts";
import { withinEngine } from "./within-engine.ts";
import { rawValue, typeInto } from "./workbench-page.ts";

const open = aroundPage();

describe("the Build sheet in the page with the open grid", { timeout: 60_000 }, () => {
  const plan = answer(
    benchWorkbook(demoSession(), "105 g mid-launch", SET_TEXT, NOTHING_TAKEN, "2026-11-25 10:00 UTC"),
  );
  const { row, column } = findText(plan.sheets[0]!, "Target");
  /** A cell of the check: figures count as the sheet has them, steps are target, measured, difference, mark. */
  const at = (club: number, figure: number, step: number) =>
    cellName(row + 1 + club, column + 4 * figure + step);

  it("is carried out so that reading the grid back gives the plan", async () => {
    const written = await open.page.evaluate((asked) => globalThis.workbench.host.write(asked), plan);
    expect(written).toMatchObject({ sheets: ["Build"], notes: [] });
    const { sheets, ...rest } = await open.page.evaluate(() => globalThis.workbench.plan());
    const ours = sheets.filter(({ name }) => name === "Build");
    expect(withinEngine(contentsOfPlan({ ...rest, sheets: ours }))).toEqual(
      withinEngine(contentsOfPlan(plan)),
    );
  });

  it("marks measured figures as they are typed, and the words follow", async () => {
    // By arithmetic from the set's targets (D1.0 and 38 in for the 5) and tolerances of half a point and 1/8 in.
    await typeInto(open.page, at(0, 2, 1), "d1,4");
    await typeInto(open.page, at(1, 2, 1), "D3.5");
    await typeInto(open.page, at(0, 1, 1), "38.25");
    await typeInto(open.page, at(1, 1, 1), "37.5");
    await typeInto(open.page, at(2, 2, 1), "soft");
    expect(await rawValue(open.page, at(0, 2, 3))).toBe("pass");
    expect(await rawValue(open.page, at(1, 2, 3))).toBe("adjust");
    expect(await rawValue(open.page, at(0, 1, 3))).toBe("adjust");
    expect(await rawValue(open.page, at(1, 1, 3))).toBe("pass");
    expect(await rawValue(open.page, at(2, 2, 2))).toBe("code?");
    expect((await rawValue(open.page, at(2, 2, 3))) || "").toBe("");
    expect(await rawValue(open.page, at(1, 2, 2))).toBeCloseTo(2, 9);
    const words = findText(plan.sheets[0]!, "What to do, in this order");
    expect(await rawValue(open.page, cellName(words.row + 1, words.column))).toBe(
      "Cut 0.25 in off the butt. Then measure swingweight again. 1 of 2 pass.",
    );
    expect(await rawValue(open.page, cellName(words.row + 2, words.column))).toMatch(
      /^Take 4\.2 g off the head, or put 7\.1 g in the butt\./,
    );
    if (process.env.LOOK) await writeFile(process.env.LOOK, await open.page.screenshot());
  });
});

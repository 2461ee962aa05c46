import { strFromU8, unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { writeXlsx } from "../../../src/hosts/file/write-xlsx.ts";
import { isProblem } from "../../../src/outcome/problem.ts";
import type { WorkbookPlan } from "../../../src/sheets/plan.ts";
import { contentsOfPlan } from "../../contents-of-plan.ts";
import { samplePlan } from "../../sheets/sample-plan.ts";
import { contentsOfXlsx } from "./contents-of-xlsx.ts";

async function written(plan: WorkbookPlan): Promise<Uint8Array> {
  const bytes = await writeXlsx(plan);
  if (isProblem(bytes)) throw new Error(bytes.message);
  return bytes;
}

describe("writeXlsx", () => {
  test("holds everything that the sample plan asks for", async () => {
    expect(await contentsOfXlsx(await written(samplePlan()))).toEqual(contentsOfPlan(samplePlan()));
  });
});
